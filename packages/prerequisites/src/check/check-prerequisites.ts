import { checkChoice } from "../model/check-ids";
import { type Facts, type Model, NO_FACTS } from "../model/model";
import { prepare } from "../model/prepare";
import { situation } from "../model/situation";
import type { CheckResult } from "./finding";
import { findingsIn } from "./findings-in";

/**
 * Everything wrong with a selection, and why. Capacities are compared as exact decimals, so that a
 * pump that just fits is not refused.
 *
 * @throws ImpossibleInputError for an unknown or doubled id, or an item chosen and barred at once.
 */
export function checkPrerequisites(
  model: Model,
  chosen: readonly string[],
  facts: Facts = NO_FACTS,
  barred: readonly string[] = [],
): CheckResult {
  const ready = prepare(model);
  checkChoice(ready.itemIds, chosen, barred);
  const findings = findingsIn(ready, situation(chosen, facts));
  return { ok: findings.length === 0, findings };
}
