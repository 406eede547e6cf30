import type { BuildTrait, Obligation, ObligationRule } from "./obligation";
import { obligationRules } from "./obligation-rules";

/**
 * What a job has to show before its vehicle leaves, in the order in which it is read out.
 *
 * @source The rules name theirs; see `obligationRules`.
 * @valid  Sites in Australia (South Australia in detail) and the United Arab Emirates. For any other country
 *         only what is promised and what keeps people from harm is listed: ask the authority there.
 */
export function obligationsFor(
  country: string,
  traits: ReadonlySet<BuildTrait>,
  rules: readonly ObligationRule[] = obligationRules,
): readonly Obligation[] {
  return rules.filter((rule) => applies(rule, country, traits)).map(bind);
}

function applies(rule: ObligationRule, country: string, traits: ReadonlySet<BuildTrait>): boolean {
  if (rule.country !== undefined && rule.country !== country) return false;
  return rule.when.length === 0 || rule.when.some((trait) => traits.has(trait));
}

/** Only promises and safety hold a vehicle back. */
function bind({ when: _when, country: _country, ...rule }: ObligationRule): Obligation {
  const safety = rule.basis === "safety";
  return {
    ...rule,
    signatory: rule.signatory ?? "",
    safety,
    blocksHandOver: safety || rule.basis === "contract",
  };
}
