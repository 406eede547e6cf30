import { expect } from "vitest";
import { type Measured, type ReferenceVector, referenceVectors } from "./reference-vectors";

type Quantities = Readonly<Record<string, Measured>>;
type EngineeringVector = ReferenceVector<Quantities, Quantities>;

/** One engineering vector of a file, with its inputs by name and its expectations checked within their tolerance. */
export function engineeringVectors(file: string) {
  const vectors = referenceVectors<Quantities, Quantities>(file);
  return (id: string) => {
    const vector = vectors.find((each) => each.id === id);
    if (!vector) throw new Error(`${file} has no vector ${id}.`);
    return opened(vector);
  };
}

function opened(vector: EngineeringVector) {
  const named = (from: Quantities, name: string): Measured => {
    const quantity = from[name];
    if (!quantity) throw new Error(`${vector.id} has no ${name}.`);
    return quantity;
  };
  return {
    given: (name: string) => named(vector.inputs, name).value,
    expected: (name: string) => named(vector.expected, name).value,
    expects: (name: string, actual: number) => {
      const { value, tolerance } = named(vector.expected, name);
      expect(Math.abs(actual - value), `${vector.id}.${name}: ${actual} for ${value}`).toBeLessThanOrEqual(
        tolerance,
      );
    },
  };
}
