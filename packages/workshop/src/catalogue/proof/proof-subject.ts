import type { CapacityRule, CatalogueToProve, VehiclesToProve } from "@buildproof/prerequisites";
import type { Catalogue, CatalogueRule } from "../../builds/catalogue-rows";
import { offeredOf } from "../../builds/package-selection";
import { asRule, notFitting, rulesFor } from "../../builds/prerequisite-model";
import { varyingFacts } from "./varying-facts";

/** A model of vehicle as the proofs need it. */
export type ModelToProve = {
  readonly code: string;
  readonly name: string;
  readonly burns: "petrol" | "diesel" | null;
  readonly facts: Readonly<Record<string, number>>;
};

export type ProofSubject = { readonly catalogue: CatalogueToProve; readonly vehicles: VehiclesToProve };

type CapacityRow = Extract<CatalogueRule, { readonly kind: "capacity" }>;

/** Everything that a proof asks about one model of vehicle, at the workshop's own place. */
export function proofSubject(
  catalogue: Catalogue,
  model: ModelToProve,
  designAmbientC: number,
): ProofSubject {
  const ranges = Object.fromEntries(
    varyingFacts.map(({ fact, range }) => [fact, range(model.burns !== "diesel")]),
  );
  const known = { ...model.facts, designAmbientC };
  const rules = rulesFor(catalogue, model.code);
  return {
    catalogue: {
      model: {
        items: catalogue.items.map(({ code }) => ({ id: code })),
        groups: catalogue.groups.map(({ code, pick, items }) => ({ id: code, pick, items })),
        rules: rules.map((rule) => asRule(rule, known)),
      },
      packages: packagesFor(catalogue, model.code).map((each) => {
        const { choices, options } = offeredOf(catalogue, each, model.code);
        return {
          id: each.code,
          items: each.items,
          options,
          choices: choices.map(({ pick, items }, at) => ({ id: choiceId(each.code, at), pick, items })),
        };
      }),
      limits: unguarded(catalogue, model).map((rule) => asCapacity(rule, known)),
    },
    vehicles: {
      facts: { ...known, ...ranges },
      barred: notFitting(catalogue, model.code),
      overridable: rules.filter(({ safety }) => !safety).map(({ code }) => code),
    },
  };
}

export function packagesFor(catalogue: Catalogue, modelCode: string) {
  return catalogue.packages.filter(({ models }) => models.length === 0 || models.includes(modelCode));
}

/** A choice of a package has a name but no code of its own. */
export function choiceId(packageCode: string, at: number): string {
  return `${packageCode} choice ${at + 1}`;
}

/** Limits that the model is known to have and that no rule keeps on it. */
export function unguarded(catalogue: Catalogue, { code, facts }: ModelToProve): readonly CapacityRow[] {
  const guarded = new Set(rulesFor(catalogue, code).map((rule) => rule.code));
  return catalogue.rules.flatMap((rule) =>
    rule.kind === "capacity" && !guarded.has(rule.code) && facts[rule.baseFact] !== undefined ? [rule] : [],
  );
}

function asCapacity(row: CapacityRow, facts: Readonly<Record<string, number>>): CapacityRule {
  const rule = asRule(row, facts);
  if (rule.kind !== "capacity") throw new Error(`${row.code} is a capacity`);
  return rule;
}
