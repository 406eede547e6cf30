import { describe, expect, test } from "vitest";
import { explainRunRefusal, explainRunWarning } from "./explain-run";
import { reduceRun } from "./run-accumulator";
import type { RunRow } from "./run-row";

/** A made sweep from 1,800 to 6,000 rpm at 300 rpm/s, 100 rows a second. */
function sweep(change: (row: RunRow, index: number) => RunRow = (row) => row): RunRow[] {
  return Array.from({ length: 1_401 }, (_, index) =>
    change({ timeS: index / 100, engineRpm: 1_800 + index * 3, hubPowerKw: 120 }, index),
  );
}

function refusalOf(rows: readonly RunRow[]): string {
  const result = reduceRun(rows, { factor: 1 });
  return result.ok ? "not refused" : explainRunRefusal(result.refusal);
}

function warningsOf(rows: readonly RunRow[]): readonly string[] {
  const result = reduceRun(rows, { factor: 1 });
  if (!result.ok) throw new Error(explainRunRefusal(result.refusal));
  return result.value.warnings.map(explainRunWarning);
}

describe("a log in another unit", () => {
  test.each([
    ["radians a second", (2 * Math.PI) / 60],
    ["thousands of revolutions", 1 / 1_000],
    ["revolutions a second", 1 / 60],
  ])("speed in %s", (_, scale) => {
    expect(refusalOf(sweep((row) => ({ ...row, engineRpm: row.engineRpm * scale })))).toMatch(
      /^Engine speed never passes \d+: the column is in another unit; export it in revolutions per minute\.$/,
    );
  });

  test.each([
    [
      "air to fuel for lambda",
      { lambda: 11.8 },
      /^What reads 11\.8 to 11\.8 .* as lambda and not as air to fuel\.$/,
    ],
    ["kelvin for °C", { intakeTempC: 318 }, /the intake temperature, in °C or °F\.$/],
    ["pascals for kPa", { boostKPa: 64_000 }, /boost, as gauge pressure/],
    ["kPa for MPa", { fuelRailMPa: 16_000 }, /the rail pressure, in MPa or bar\.$/],
  ])("%s", (_, channel, sentence) => {
    expect(refusalOf(sweep((row) => ({ ...row, ...channel })))).toMatch(sentence);
  });

  test("what a full-load sweep can read is not taken for another unit", () => {
    const usual = { lambda: 0.79, intakeTempC: 68, boostKPa: 145, fuelRailMPa: 21 };
    expect(warningsOf(sweep((row) => ({ ...row, ...usual })))).toEqual([]);
    const diesel = { lambda: 1.9, intakeTempC: 55, boostKPa: 210, fuelRailMPa: 180 };
    expect(warningsOf(sweep((row) => ({ ...row, ...diesel })))).toEqual([]);
  });
});

describe("a speed that does not rise", () => {
  test("stuck for longer than half a second within the sweep is said, with where", () => {
    const stuck = sweep((row, index) => (index > 700 && index < 790 ? { ...row, engineRpm: 3_900 } : row));
    expect(warningsOf(stuck)).toContain(
      "Engine speed stands still at 3900 rpm for 0.9 s within the sweep: look at the speed pick-up.",
    );
  });

  test("repeated over a few rows, or held before the sweep, is how logs are", () => {
    const stepped = sweep((row) => ({ ...row, engineRpm: Math.floor(row.engineRpm / 30) * 30 }));
    expect(warningsOf(stepped)).toEqual([]);
    const soak = Array.from({ length: 300 }, (_, index) => ({
      timeS: index / 100 - 3,
      engineRpm: 1_800,
      hubPowerKw: 20,
    }));
    expect(warningsOf([...soak, ...sweep()])).toEqual([]);
  });

  test("falling all the way is refused as such", () => {
    expect(refusalOf(sweep((row) => ({ ...row, engineRpm: 7_800 - row.engineRpm })))).toBe(
      "Engine speed falls from 6000 to 1800 rpm: export the sweep in which it rises, in order of time.",
    );
  });

  test("falling half way leaves the longer rise, and says that there are two", () => {
    const shifted = sweep((row, index) => (index < 900 ? row : { ...row, engineRpm: row.engineRpm - 1_500 }));
    expect(warningsOf(shifted)).toContain(
      "Engine speed falls within the run: it also rises from 3000 to 4500 rpm, and only the longest rise is used.",
    );
  });
});

test("a gap in speed is left open and said in a sentence", () => {
  const holed = sweep().filter(({ engineRpm }) => engineRpm < 3_000 || engineRpm > 3_600);
  expect(warningsOf(holed)).toEqual([
    expect.stringMatching(/^Nothing was logged from 299\d to 360\d rpm; the curve is left open there\.$/),
  ]);
});
