import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BoltTorqueQuestion, boltTorque } from "./bolt-torque";
import { propertyClasses } from "./property-class";

const question: BoltTorqueQuestion = { thread: "M10", propertyClass: "8.8", preloadPct: 75, frictionK: 0.15 };
const byFriction: BoltTorqueQuestion = {
  ...question,
  frictionK: undefined,
  threadFriction: 0.12,
  headFriction: 0.12,
  headBearingDiameterMm: 12.8,
};

test("M10 is M10x1.5, and a fine thread carries more", () => {
  expect(boltTorque(question)).toEqual(boltTorque({ ...question, thread: "M10x1.5" }));
  expect(boltTorque({ ...question, thread: "m10 × 1.25" }).preloadKN).toBeGreaterThan(
    boltTorque(question).preloadKN,
  );
});

test("class 8.8 is stronger above 16 mm", () => {
  expect(boltTorque({ ...question, thread: "M16" }).proofStressMPa).toBe(580);
  expect(boltTorque({ ...question, thread: "M18" }).proofStressMPa).toBe(600);
});

test("the torque worked out from friction is that of its nut factor", () => {
  const worked = boltTorque(byFriction);
  const stated = boltTorque({ ...question, frictionK: worked.frictionK });
  expect(stated).toEqual(worked);
  expect(worked.frictionK).toBeGreaterThan(0.12);
  expect(worked.frictionK).toBeLessThan(0.2);
});

test("torque rises with preload, friction, size and class, and is a number for every valid question", () => {
  const threads = ["M6", "M8", "M10", "M12", "M14", "M16", "M18", "M20", "M24", "M30"];
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: threads.length - 2 }),
      fc.integer({ min: 1, max: 98 }),
      fc.double({ min: 0.05, max: 0.98, noNaN: true }),
      fc.constantFrom(...propertyClasses),
      (size, preloadPct, frictionK, propertyClass) => {
        const thread = threads[size] ?? "M6";
        const at = (change: Partial<BoltTorqueQuestion>) =>
          boltTorque({ thread, propertyClass, preloadPct, frictionK, ...change }).torqueNm;
        expect(at({})).toBeGreaterThan(0);
        expect(at({ preloadPct: preloadPct + 1 })).toBeGreaterThan(at({}));
        expect(at({ frictionK: frictionK + 0.01 })).toBeGreaterThan(at({}));
        expect(at({ thread: threads[size + 1] ?? "" })).toBeGreaterThan(at({}));
        if (propertyClass !== "12.9") expect(at({ propertyClass: "12.9" })).toBeGreaterThan(at({}));
      },
    ),
  );
});

describe("questions that do not go together", () => {
  test.each([
    [{ thread: "10 mm" }, "unknown-thread", "thread"],
    [{ thread: "M13" }, "unknown-thread", "thread"],
    [{ thread: "M10x1.7" }, "unknown-thread", "thread"],
    [{ preloadPct: 0 }, "out-of-range", "preloadPct"],
    [{ preloadPct: 101 }, "out-of-range", "preloadPct"],
    [{ frictionK: 0 }, "out-of-range", "frictionK"],
    [{ threadFriction: 0.12 }, "friction-twice", "frictionK"],
    [{ frictionK: undefined }, "friction-missing", "frictionK"],
    [{ ...byFriction, headFriction: undefined }, "friction-missing", "headFriction"],
    [{ ...byFriction, headBearingDiameterMm: 8 }, "out-of-range", "headBearingDiameterMm"],
    [{ ...byFriction, threadFriction: -0.1 }, "out-of-range", "threadFriction"],
  ] as const)("%j is refused as %s at %s", (change, code, path) => {
    expect(() => boltTorque({ ...question, ...change })).toThrow(expect.objectContaining({ code, path }));
  });
});
