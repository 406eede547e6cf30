import fc from "fast-check";
import type { CapacityRule } from "../model/model";
import type { CatalogueToProve, VehiclesToProve } from "../proofs/catalogue-proof";
import type { FactRange } from "../proofs/fact-range";
import { randomQuestion } from "./random-model";

/** Small catalogues with packages, limits nobody keeps, rules that may be set aside, and vehicles that vary. */
export function randomProof(
  largest: number,
): fc.Arbitrary<{ readonly catalogue: CatalogueToProve; readonly vehicles: VehiclesToProve }> {
  return randomQuestion(largest).chain(({ model, barred = [] }) => {
    const ids = model.items.map(({ id }) => id);
    const rules = (model.rules ?? []).map(({ id }) => id);
    const some = (most: number) => fc.subarray(ids, { maxLength: Math.min(most, ids.length) });
    return fc
      .record({
        f: range,
        g: range,
        overridable: fc.subarray(rules),
        items: some(2),
        choice: some(3),
        pick: fc.constantFrom("at-most-one" as const, "exactly-one" as const, "at-least-one" as const),
        options: some(2),
        demand: some(4),
        base: fc.integer({ min: 0, max: 6 }),
      })
      .map(({ f, g, overridable, items, choice, pick, options, demand, base }) => {
        const limit: CapacityRule = {
          id: "further",
          kind: "capacity",
          base,
          demand: Object.fromEntries(demand.map((id, at) => [id, at + 1])),
        };
        const choices = choice.length > 0 ? [{ id: "choice", pick, items: choice }] : [];
        const packages = [
          { id: "plain", items },
          { id: "chosen", items, choices, options },
        ];
        return {
          catalogue: { model, packages, limits: [limit] },
          vehicles: { facts: { f, g }, barred, overridable },
        };
      });
  });
}

const quarters = fc.integer({ min: 0, max: 12 }).map((count) => count / 4);

const range: fc.Arbitrary<FactRange> = fc.oneof(
  quarters,
  fc.record({ oneOf: fc.uniqueArray(quarters, { minLength: 1, maxLength: 3 }) }),
  fc.record({ from: quarters, wide: fc.integer({ min: 0, max: 3 }) }).map(({ from, wide }) => {
    return { from, to: from + wide / 4 };
  }),
);
