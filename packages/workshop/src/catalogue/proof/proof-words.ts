import type { ProofWords } from "@buildproof/prerequisites";
import type { Catalogue } from "../../builds/catalogue-rows";
import { choiceId } from "./proof-subject";
import { varyingFactWords } from "./varying-facts";

const picks = {
  "at-most-one": "one at most",
  "exactly-one": "exactly one",
  "at-least-one": "one or more",
} as const;

/** The catalogue's own names for what a proof speaks of. */
export function proofWords(catalogue: Catalogue): ProofWords {
  const items = new Map(catalogue.items.map(({ code, name }) => [code, name]));
  const packages = new Map(catalogue.packages.map(({ code, name }) => [code, name]));
  const item = (code: string): string => items.get(code) ?? code;
  const choices = catalogue.packages.flatMap((each) =>
    each.choices.map((choice, at) => ({ ...choice, code: choiceId(each.code, at) })),
  );
  const rules = new Map([
    ...catalogue.rules.map(({ code, because }) => [code, because] as const),
    ...[...catalogue.groups, ...choices].map(
      ({ code, name, pick, items: members }) =>
        [code, `${name}: ${picks[pick]} of ${members.map(item).join(", ")}.`] as const,
    ),
  ]);
  const limits = new Map(
    catalogue.rules.flatMap((rule) =>
      rule.kind === "capacity" ? [[rule.code, { name: rule.quantity, unit: rule.unit }] as const] : [],
    ),
  );
  return {
    item,
    package: (code) => packages.get(code) ?? code,
    rule: (code) => rules.get(code) ?? code,
    fact: (fact, value, how) => varyingFactWords(fact, Number(value), how),
    limit: (code) => limits.get(code) ?? { name: code, unit: "" },
  };
}
