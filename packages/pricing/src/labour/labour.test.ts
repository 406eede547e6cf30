import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { labour } from "./labour";
import type { LabourPlan } from "./labour-plan";

/** Common practice of the trade, no source: hours of a workshop's own procedures. */
const access = [
  { id: "UT", hours: 0.3 },
  { id: "FE", hours: 2.2, needs: ["UT"] },
  { id: "IN", hours: 1.8 },
  { id: "CL", hours: 0.9, needs: ["UT"] },
  { id: "FU", hours: 0.5 },
  { id: "BD", hours: 0.5 },
  { id: "FN", hours: 0.6 },
  { id: "CV", hours: 0.4 },
  { id: "BS", hours: 0.2 },
];
const operations = [
  { id: "blower", hours: 11.5, access: ["FE", "IN", "CL", "FU", "BD"] },
  { id: "cooler", hours: 4.2, access: ["FE", "CL"] },
  { id: "crank pin", hours: 1.6, access: ["BD", "FN", "UT"] },
  { id: "tensioner", hours: 0.4, access: ["BD"] },
  { id: "pump", hours: 2.7, access: ["IN", "FU"] },
  { id: "plugs", hours: 1.2, access: ["CV"] },
  { id: "flash", hours: 0.8, access: ["BS"] },
];

describe("labour with shared access work", () => {
  test("taking the front off once serves blower, cooler and pump: 29.8 h instead of 36.8 h", () => {
    expect(labour({ access, operations })).toEqual({
      hours: 29.8,
      ownHours: 22.4,
      accessHours: 7.4,
      savedHours: 7,
      accessUsed: ["UT", "FE", "IN", "CL", "FU", "BD", "FN", "CV", "BS"],
    });
  });

  test("access work brings what it needs, once", () => {
    const answer = labour({ access, operations: [{ id: "cooler", hours: 4.2, access: ["CL", "FE"] }] });
    expect(answer).toEqual({
      hours: 7.6,
      ownHours: 4.2,
      accessHours: 3.4,
      savedHours: 0,
      accessUsed: ["UT", "FE", "CL"],
    });
  });

  test("nothing to do takes no time", () => {
    expect(labour({ access, operations: [] })).toMatchObject({ hours: 0, savedHours: 0, accessUsed: [] });
  });

  test.each([
    [
      {
        access: [
          { id: "a", hours: 1, needs: ["b"] },
          { id: "b", hours: 1, needs: ["a"] },
        ],
        operations: [],
      },
      "cycle",
    ],
    [{ access: [{ id: "a", hours: 1, needs: ["a"] }], operations: [] }, "cycle"],
    [{ access: [{ id: "a", hours: 1, needs: ["z"] }], operations: [] }, "unknown-id"],
    [{ access: [], operations: [{ id: "o", hours: 1, access: ["z"] }] }, "unknown-id"],
    [
      {
        access: [
          { id: "a", hours: 1 },
          { id: "a", hours: 1 },
        ],
        operations: [],
      },
      "doubled-id",
    ],
  ] as const satisfies readonly (readonly [LabourPlan, string])[])("case %# is refused", (plan, code) => {
    expect(() => labour(plan)).toThrow(expect.objectContaining({ code }));
  });

  test("together is never more than apart, and what is saved is the difference", () => {
    const ids = ["a", "b", "c", "d", "e"];
    const plan = fc.record({
      access: fc.tuple(
        ...ids.map((id, index) =>
          fc.record({
            id: fc.constant(id),
            hours: fc.nat(30).map((n) => n / 10),
            needs: fc.subarray(ids.slice(index + 1)),
          }),
        ),
      ),
      operations: fc
        .array(fc.record({ hours: fc.nat(30).map((n) => n / 10), access: fc.subarray(ids) }), {
          maxLength: 5,
        })
        .map((all) => all.map((each, index) => ({ ...each, id: `o${index}` }))),
    });
    fc.assert(
      fc.property(plan, (each) => {
        const together = labour(each);
        const apart = each.operations.reduce(
          (sum, operation) => sum + labour({ ...each, operations: [operation] }).hours,
          0,
        );
        expect(together.savedHours).toBeGreaterThanOrEqual(0);
        expect(together.hours + together.savedHours).toBeCloseTo(apart, 9);
        expect(together.hours).toBeCloseTo(together.ownHours + together.accessHours, 9);
      }),
    );
  });
});
