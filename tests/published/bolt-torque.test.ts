import { type BoltTorqueQuestion, boltTorque } from "@buildproof/engineering";
import { describe, expect, test } from "vitest";
import { type Measured, type ReferenceVector, referenceVectors, unusedVectors } from "./reference-vectors";

type Quantities = Readonly<Record<string, Measured>>;
const vectors = referenceVectors<Quantities, Quantities>("bolt-torque.json");
const starting = (prefix: string) => {
  const found = vectors.filter(({ id }) => id.startsWith(prefix));
  if (found.length === 0) throw new Error(`No vector begins with ${prefix}.`);
  return found;
};
const value = (quantities: Quantities, name: string) => quantities[name]?.value ?? Number.NaN;

function within(actual: number, expected: Measured | undefined): void {
  if (!expected) throw new Error("The vector expects nothing.");
  expect(Math.abs(actual - expected.value)).toBeLessThanOrEqual(expected.tolerance + 1e-9);
}

const dry: BoltTorqueQuestion = { thread: "M12", propertyClass: "10.9", preloadPct: 100, frictionK: 0.2 };

describe("ISO 898-1", () => {
  test.each(starting("stress-area"))("$id, coarse pitch ($source)", ({ inputs, expected }) => {
    const answer = boltTorque({ ...dry, thread: `M${value(inputs, "D")}` });
    within(answer.stressAreaMm2, expected.As);
    expect(answer.pitchMm).toBe(value(inputs, "P"));
  });

  test.each(starting("proof-"))("$id, printed loads are rounded: 0.5 % ($source)", ({ id, expected }) => {
    const [, thread = "", propertyClass = ""] = id.split("-");
    // The class is one of those the file names.
    const answer = boltTorque({ ...dry, thread, propertyClass: propertyClass as typeof dry.propertyClass });
    expect(Math.abs((answer.preloadKN * 1000) / value(expected, "F_p") - 1)).toBeLessThan(0.005);
  });
});

describe("VDI 2230 tables", () => {
  const YIELD_MPA = new Map([
    ["8.8", 640],
    ["10.9", 940],
    ["12.9", 1100],
  ]);

  /** The table's preload is 90 % of yield under tension and torsion together; ours is a share of the proof load. */
  function tableQuestion({ id, inputs }: ReferenceVector<Quantities, Quantities>, preloadKN: number) {
    const [, thread = "", propertyClass = ""] = id.split("-");
    const mu = value(inputs, "mu");
    const question: BoltTorqueQuestion = {
      thread,
      propertyClass: propertyClass as typeof dry.propertyClass, // one of those the file names
      preloadPct: 100,
      threadFriction: mu,
      headFriction: mu,
      headBearingDiameterMm: (value(inputs, "d_w") + value(inputs, "d_h")) / 2,
    };
    const proof = boltTorque(question).preloadKN;
    return { ...question, preloadPct: (100 * preloadKN) / proof };
  }

  test.each(starting("vdi-"))("$id: preload and torque as printed ($source)", (vector) => {
    const { inputs, expected } = vector;
    const answer = boltTorque(tableQuestion(vector, value(expected, "F_M")));
    expect(answer.preloadKN).toBeCloseTo(value(expected, "F_M"), 9);
    if (expected.M_A) within(answer.torqueNm, expected.M_A);
    // The guideline's own preload, from our stress area.
    const [d, pitch, mu] = [value(inputs, "D"), value(inputs, "P"), value(inputs, "mu")];
    const d2 = d - 0.649519 * pitch;
    const d0 = Math.sqrt((4 * answer.stressAreaMm2) / Math.PI);
    const torsion = 1.5 * (d2 / d0) * (pitch / (Math.PI * d2) + 1.155 * mu);
    const strength = YIELD_MPA.get(vector.id.split("-")[2] ?? "") ?? Number.NaN;
    within((0.9 * strength * answer.stressAreaMm2) / 1000 / Math.sqrt(1 + 3 * torsion ** 2), expected.F_M);
  });
});

describe("nut factor", () => {
  test.each(starting("tkdf-M12-10.9"))("$id ($source)", ({ inputs, expected }) => {
    const full = boltTorque(dry);
    const preloadPct = value(inputs, "F") / 10 / full.preloadKN;
    const answer = boltTorque({ ...dry, preloadPct, frictionK: value(inputs, "K") });
    within(answer.torqueNm, expected.T);
  });

  test.each(starting("tkdf-inverse"))("$id, turned round ($source)", ({ inputs, expected }) => {
    const wheel: BoltTorqueQuestion = { ...dry, thread: "M14x1.5", frictionK: value(inputs, "K") };
    const preloadPct = value(expected, "F") / 10 / boltTorque(wheel).preloadKN;
    expect(boltTorque({ ...wheel, preloadPct }).torqueNm).toBeCloseTo(value(inputs, "T"), 5);
  });
});

test("tkdf-scatter: the preload that one torque gives, and its scatter unlubricated", () => {
  const vector = vectors.find(({ id }) => id === "tkdf-scatter");
  if (!vector) throw new Error("There is no tkdf-scatter.");
  const { inputs, expected } = vector;
  const question = { ...dry, thread: `M${value(inputs, "d")}`, frictionK: value(inputs, "K") };
  const full = boltTorque(question);
  const preloadN = (1000 * full.preloadKN * value(inputs, "T")) / full.torqueNm;
  within(preloadN * (1 - value(inputs, "u")), expected.F_min);
  within(preloadN * (1 + value(inputs, "u")), expected.F_max);
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("bolt-torque.json")).toEqual([]);
});
