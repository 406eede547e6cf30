import { describe, expect, test } from "vitest";
import { type ComparedLine, changeInWords, versionDifference } from "./version-difference";

const plugs: ComparedLine = {
  kind: "item",
  code: "plugs",
  description: "Spark plugs, two steps colder",
  quantity: "1",
  unit: "each",
  discountPct: "0",
  unitPriceMinor: 26_000,
  grossMinor: 28_600,
};
const pump = {
  ...plugs,
  code: "pump",
  description: "High-pressure pump upgrade",
  unitPriceMinor: 194_000,
  grossMinor: 213_400,
};
const fitPump = {
  ...plugs,
  kind: "operation",
  code: "pump",
  description: "Fit the pump",
  quantity: "2.7",
  unit: "h",
};

describe("what changed from one version to the next", () => {
  test("nothing, when the lines are the same in another order", () => {
    expect(versionDifference([plugs, pump], [pump, plugs])).toEqual([]);
  });

  test("a line added, one changed and one taken off", () => {
    const changes = versionDifference(
      [plugs, pump],
      [{ ...plugs, quantity: "2", grossMinor: 57_200 }, fitPump],
    );
    expect(changes.map(({ kind }) => kind)).toEqual(["changed", "added", "removed"]);
    expect(changes.map(changeInWords)).toEqual([
      "Spark plugs, two steps colder: quantity 1 → 2",
      "Fit the pump added, 2.7 h",
      "High-pressure pump upgrade taken off",
    ]);
  });

  test("a part and the work of fitting it are two lines, though they share a code", () => {
    expect(versionDifference([pump], [fitPump])).toHaveLength(2);
  });

  test("not a line that is cheaper only because the whole is", () => {
    expect(versionDifference([pump], [{ ...pump, grossMinor: 210_000 }])).toEqual([]);
  });

  test("a price that rose by itself is a change", () => {
    const [change] = versionDifference([pump], [{ ...pump, unitPriceMinor: 200_000, grossMinor: 220_000 }]);
    expect(change && changeInWords(change)).toBe("High-pressure pump upgrade: price changed");
  });
});
