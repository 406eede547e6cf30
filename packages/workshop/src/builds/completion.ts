import { checkPrerequisites } from "@buildproof/prerequisites";
import { type FixOffer, offerOfFix } from "./fix-offer";
import { type Ledger, ledgerOf } from "./ledger";
import type { CheckedBuild } from "./sheet-findings";
import { soundFixes } from "./sound-fixes";

export type Completion = { readonly offer: FixOffer; readonly ledger: Ledger };

/** More rounds than any honest catalogue needs; a rule that asks in circles ends here. */
const MOST_ROUNDS = 40;

/**
 * The build with what is missing: finding after finding closed by its cheapest fix. What no added item can mend
 * (the fuel recorded, a clash) is left out. A good estimate; the provably best completion is another calculation.
 * Null when nothing can be added.
 */
export function completionOf(build: CheckedBuild): Completion | null {
  const { model, factsWith, catalogue, site } = build;
  const chosen = build.chosen.map(({ code }) => code);
  const codes = [...chosen];
  const hopeless = new Set<string>();
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { findings } = checkPrerequisites(model, codes, factsWith(codes));
    const open = findings.find(({ rule }) => !hopeless.has(rule));
    if (!open) break;
    const [cheapest] = soundFixes(build, codes, open);
    if (cheapest && cheapest.add.length > 0) codes.push(...cheapest.add);
    else hopeless.add(open.rule);
  }
  const add = codes.slice(chosen.length);
  if (add.length === 0) return null;
  const all = [...build.chosen, ...add.map((code) => ({ code, quantity: 1 }))];
  return {
    offer: offerOfFix(build, { add, price: 0, hours: 0, leadDays: 0, worsens: [] }),
    ledger: ledgerOf(catalogue, site, all),
  };
}
