import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { dateInZone } from "../core/site-date";
import { query } from "../core/use-case";
import { writeDocument } from "./exchange/catalogue-document";
import { partFiles } from "./exchange/part-tables";
import { writeTable } from "./exchange/write-table";
import { partKinds } from "./part-content";
import { readCatalogueState } from "./read-catalogue-state";

/** The catalogue as it stands, in one document or one part of it as a table. Its costs are in it. */
export const exportCatalogue = query({
  name: "catalogue.export",
  permission: "catalogue:write",
  input: z.strictObject({
    /** Null: the whole catalogue. */
    part: z.enum(partKinds, "Choose the whole catalogue or one of its parts.").nullable(),
  }),
  async run({ tx, now }, { part }) {
    const { currency, timeZone } = await readSite(tx);
    const state = await readCatalogueState(tx);
    const day = dateInZone(now, timeZone);
    if (part === null)
      return ok({
        name: `catalogue-${day}.json`,
        mediaType: "application/json; charset=utf-8",
        text: writeDocument(state.parts, currency, now),
      });
    const name = `catalogue-${partFiles[part].replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}-${day}.csv`;
    return ok({ name, mediaType: "text/csv; charset=utf-8", text: writeTable(part, state, currency) });
  },
});
