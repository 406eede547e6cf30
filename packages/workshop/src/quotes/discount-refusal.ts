import { compareDecimals, exactDecimal } from "@buildproof/units";
import { mayDo } from "../core/permissions";
import type { PersonWork } from "../core/use-case";
import type { DraftLine } from "./draft-line";
import { refuse } from "./refuse-quote";

type Discounted = Pick<DraftLine, "discountPct">;

/**
 * Refuses a discount beyond the site's limit by somebody who may not give it. What the owner granted earlier
 * stays, and may be lowered by anybody.
 */
export function discountRefusal(
  work: Pick<PersonWork, "person">,
  limitPct: number,
  line: Discounted,
  before: Discounted | null,
) {
  const given = exactDecimal(line.discountPct);
  const isWithin = compareDecimals(given, exactDecimal(limitPct)) <= 0;
  const isGranted = before !== null && compareDecimals(given, exactDecimal(before.discountPct)) <= 0;
  if (isWithin || isGranted || mayDo("quotes:discount", work.person.roles)) return null;
  return refuse("discount-over-limit", { limitPct });
}
