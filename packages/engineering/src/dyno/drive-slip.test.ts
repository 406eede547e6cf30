import { describe, expect, test } from "vitest";
import { driveSlip, explainDriveSlip } from "./drive-slip";
import { reduceRun } from "./run-accumulator";
import type { RunRow } from "./run-row";

const RATIO = 3.36;

/** A made sweep whose hubs turn as the ratio at each engine speed says. */
function slipOf(ratioAt: (engineRpm: number) => number, expected = RATIO) {
  const rows = Array.from({ length: 1_401 }, (_, index): RunRow => {
    const engineRpm = 1_800 + index * 3;
    return { timeS: index / 100, engineRpm, hubPowerKw: 100, hubRpm: engineRpm / ratioAt(engineRpm) };
  });
  const reduced = reduceRun(rows, { factor: 1 });
  if (!reduced.ok || !reduced.value.drive) throw new Error("the made sweep has hub speeds");
  return driveSlip(reduced.value.drive, expected);
}

describe("engine and hubs of a run", () => {
  test("that keep to gear and final drive within 1 % hold", () => {
    expect(slipOf(() => RATIO)).toMatchObject({ outcome: "held", expectedRatio: RATIO });
    expect(slipOf(() => RATIO * 1.009).outcome).toBe("held");
    expect(explainDriveSlip(slipOf(() => RATIO))).toBeNull();
  });

  test("show a converter that is open at low speed and locks later", () => {
    const slip = slipOf((rpm) => (rpm < 2_600 ? RATIO * (1 + (2_600 - rpm) / 10_000) : RATIO));
    expect(slip.outcome).toBe("slipped");
    expect(slip.worstAtRpm).toBeLessThan(1_900);
    expect(slip.worstPct).toBeGreaterThan(6);
    expect(explainDriveSlip(slip)).toMatch(
      /^Engine and hubs differ from 3\.36 to 1 by [67]\.\d % at 18\d0 rpm, where 1 % is allowed: lock the converter/,
    );
  });

  test("show a gearbox that shifts half way", () => {
    expect(slipOf((rpm) => (rpm < 4_000 ? RATIO : RATIO * 0.86)).outcome).toBe("slipped");
  });

  test("turn at another ratio all along when another gear is held than was entered", () => {
    const slip = slipOf(() => RATIO * 1.4);
    expect(slip).toMatchObject({ outcome: "another-ratio" });
    expect(slip.meanRatio).toBeCloseTo(4.704, 6);
    expect(explainDriveSlip(slip)).toMatch(
      /^The engine turns 4\.70 times for one turn of the hubs all along/,
    );
  });

  test("say nothing when the log carries no speed of the hubs", () => {
    const rows = Array.from({ length: 500 }, (_, index) => ({
      timeS: index / 50,
      engineRpm: 2_000 + index * 6,
      hubPowerKw: 90,
    }));
    const reduced = reduceRun(rows, { factor: 1 });
    expect(reduced.ok && reduced.value.drive).toBeNull();
  });

  test("cannot be judged against a ratio of nought", () => {
    expect(() => slipOf(() => RATIO, 0)).toThrow(RangeError);
  });
});
