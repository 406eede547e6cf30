import { describe, expect, test } from "vitest";
import { explainHeatSoak, explainOutlier } from "./explain-run-spread";
import type { ReducedRun } from "./reduced-run";
import { reduceRun } from "./run-accumulator";
import { runSpread } from "./run-spread";

type Made = {
  level?: number;
  boostKPa?: number;
  lambda?: number;
  fuelRailMPa?: number;
  intakeTempC?: number;
};

/** A made run, level times a usual curve, with its channels constant. */
function run({ level = 1, ...channels }: Made = {}): ReducedRun {
  const rows = Array.from({ length: 900 }, (_, index) => {
    const engineRpm = 2_000 + index * 4;
    const hubPowerKw = level * (360 - ((engineRpm - 5_400) / 220) ** 2);
    return { timeS: index / 100, engineRpm, hubPowerKw, ...channels };
  });
  const reduced = reduceRun(rows, { factor: 1 });
  if (!reduced.ok) throw new Error("a made run can be reduced");
  return reduced.value;
}

describe("a run beside the others", () => {
  test("stands apart when it is more than 2 % off the median of the others", () => {
    const { standings } = runSpread([run(), run({ level: 1.003 }), run({ level: 0.97 })]);
    expect(standings.map(({ isOutlier }) => isOutlier)).toEqual([false, false, true]);
    expect(standings[2]?.offOthersPct).toBeCloseTo(100 * (0.97 / 1.0015 - 1), 6);
  });

  test("is said to with what its log shows: hotter air, less boost, a leaner mixture, less rail pressure", () => {
    const usual = { boostKPa: 64, lambda: 0.8, fuelRailMPa: 16, intakeTempC: 50 };
    const odd = { boostKPa: 58, lambda: 0.83, fuelRailMPa: 15.2, intakeTempC: 61 };
    const { standings } = runSpread([run(usual), run(usual), run({ ...odd, level: 0.95 })]);
    const [, , last] = standings;
    expect(last && explainOutlier(last)).toBe(
      "5.0 % below the others, with 6 kPa less boost, a mixture 0.030 lambda leaner, 0.8 MPa less rail pressure, intake air 11 °C hotter: put that right, then run again.",
    );
  });

  test("is said to when nothing in the log explains it", () => {
    const [, , last] = runSpread([run(), run(), run({ level: 1.04 })]).standings;
    expect(last && explainOutlier(last)).toMatch(
      /^4\.0 % above the others, and no channel of the log says why/,
    );
  });

  test("does not make odd ones of the two that agree, and where none agree nobody is blamed", () => {
    const odd = (...levels: readonly number[]) =>
      runSpread(levels.map((level) => run({ level }))).standings.map(({ isOutlier }) => isOutlier);
    expect(odd(1, 0.92, 1.003)).toEqual([false, true, false]);
    expect(odd(1, 0.92, 0.84)).toEqual([false, false, false]);
  });

  test("is not told from the other where there are only two", () => {
    expect(runSpread([run(), run({ level: 0.9 })]).standings.some(({ isOutlier }) => isOutlier)).toBe(false);
  });
});

describe("heat soak", () => {
  const warming = [0, 1, 2].map((index) => run({ level: 1 - 0.006 * index, intakeTempC: 45 + 4 * index }));

  test("is power that falls from run to run while the intake air warms", () => {
    const { heatSoak } = runSpread(warming);
    expect(heatSoak?.intakeKPerRun).toBeCloseTo(4, 6);
    expect(heatSoak?.powerPctPerRun).toBeCloseTo(-100 * (0.006 / 0.994), 6);
    expect(heatSoak && explainHeatSoak(heatSoak)).toBe(
      "Power falls by 0.6 % from run to run while the intake air warms by 4.0 °C: heat soak; let it cool to the same temperature before every run.",
    );
  });

  test("is not what a falling power in cooling air shows, nor runs that rise", () => {
    const cooling = [0, 1, 2].map((index) => run({ level: 1 - 0.006 * index, intakeTempC: 50 - index }));
    expect(runSpread(cooling).heatSoak?.isSoaking).toBe(false);
    expect(runSpread(warming.toReversed()).heatSoak?.isSoaking).toBe(false);
  });

  test("needs three runs to be seen", () => {
    expect(runSpread(warming.slice(0, 2)).heatSoak).toBeNull();
    expect(runSpread([])).toEqual({ standings: [], heatSoak: null });
  });
});
