import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { dateInZone } from "../core/site-date";
import { query } from "../core/use-case";
import { arrivalsToday, collectionsToday } from "./comings-and-goings";
import { type Owed, urgency } from "./owed";
import { owedOnCatalogue } from "./owed-on-catalogue";
import { owedOnJobs } from "./owed-on-jobs";
import { owedOnQuotes } from "./owed-on-quotes";

/** What the desk owes people now, the most urgent first, and who comes and goes today. */
export const showToday = query({
  name: "today.show",
  permission: "customers:read",
  input: z.strictObject({}),
  async run({ tx, now, person }) {
    const site = await readSite(tx);
    const today = dateInZone(now, site.timeZone);
    const moment = { now, today, site };
    const owed: readonly Owed[] = [
      ...(mayDo("quotes:read", person.roles) ? await owedOnQuotes(tx, moment) : []),
      ...(await owedOnJobs(tx, moment)),
      ...(mayDo("catalogue:write", person.roles) ? await owedOnCatalogue(tx, moment) : []),
    ];
    return ok({
      today,
      timeZone: site.timeZone,
      worksOnTheFloorOnly: person.roles.every((role) => role === "technician"),
      owed: owed.toSorted((a, b) => urgency(a) - urgency(b) || a.since.localeCompare(b.since)),
      arrivals: await arrivalsToday(tx, moment),
      collections: await collectionsToday(tx, moment),
    });
  },
});
