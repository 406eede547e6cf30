import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { findBuilds, findJobs, findQuotes } from "./find-by-number";
import { findCustomers, findItems, findVehicles } from "./find-by-text";
import type { FoundGroup, FoundKind } from "./found";
import { recentThings } from "./recent-things";
import { whatIsTyped } from "./what-is-typed";

/** What can be begun from what was typed and is not here yet. */
export type FindOffer =
  | { readonly kind: "new-vehicle"; readonly vin: string }
  | { readonly kind: "new-vehicle"; readonly plate: string }
  | { readonly kind: "new-customer"; readonly name: string };

/** Finds by name, telephone, e-mail, plate, VIN, number or part; what is newest when nothing is typed. */
export const findEverything = query({
  name: "find.everything",
  permission: "find",
  input: z.strictObject({ q: z.string().trim().max(100, "Search for at most 100 characters.") }),
  async run({ tx, person }, { q }) {
    const seesQuotes = mayDo("quotes:read", person.roles);
    if (q === "") return ok({ groups: filled(await recentThings(tx, seesQuotes)), offers: [] });
    const typed = whatIsTyped(q);
    const groups: readonly FoundGroup[] = [
      { kind: "vehicle", hits: await findVehicles(tx, typed) },
      { kind: "customer", hits: await findCustomers(tx, typed) },
      { kind: "build", hits: await findBuilds(tx, typed) },
      { kind: "quote", hits: seesQuotes ? await findQuotes(tx, typed) : [] },
      { kind: "job", hits: await findJobs(tx, typed) },
      { kind: "item", hits: await findItems(tx, typed) },
    ];
    const offers = mayDo("customers:write", person.roles) ? offersFor(groups, typed) : [];
    return ok({ groups: filled(groups), offers });
  },
});

function filled(groups: readonly FoundGroup[]): readonly FoundGroup[] {
  return groups.filter(({ hits }) => hits.length > 0);
}

function offersFor(
  groups: readonly FoundGroup[],
  typed: ReturnType<typeof whatIsTyped>,
): readonly FindOffer[] {
  const found = (kind: FoundKind) => groups.some((group) => group.kind === kind && group.hits.length > 0);
  if (typed.looksLikeVin) return found("vehicle") ? [] : [{ kind: "new-vehicle", vin: typed.compact }];
  if (typed.looksLikePlate)
    return found("vehicle") ? [] : [{ kind: "new-vehicle", plate: typed.text.toUpperCase() }];
  // Somebody whose name is only like it may be somebody else.
  const isKnown = groups.some(
    ({ kind, hits }) =>
      kind === "customer" && hits.some(({ title }) => title.toLowerCase().includes(typed.lower)),
  );
  return typed.looksLikeName && !isKnown ? [{ kind: "new-customer", name: typed.text }] : [];
}
