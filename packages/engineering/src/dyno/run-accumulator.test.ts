import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainRunRefusal, explainRunWarning } from "./explain-run";
import type { ReducedRun, RunSettings } from "./reduced-run";
import { reduceRun, runAccumulator } from "./run-accumulator";
import type { RunRow } from "./run-row";

const plain: RunSettings = { factor: 1 };
const K = (2 * Math.PI) / 60_000;

/** A made sweep, 100 rows a second, 300 rpm a second. */
function sweep(power: (rpm: number) => number, fromRpm = 1500, toRpm = 6000): RunRow[] {
  const rows = Math.round((toRpm - fromRpm) / 3) + 1;
  return Array.from({ length: rows }, (_, index) => {
    const engineRpm = fromRpm + index * 3;
    return { timeS: index / 100, engineRpm, hubPowerKw: power(engineRpm) };
  });
}

function reduced(rows: Iterable<RunRow>, settings = plain): ReducedRun {
  const result = reduceRun(rows, settings);
  if (!result.ok) throw new Error(explainRunRefusal(result.refusal));
  return result.value;
}

const hump = (rpm: number) => 300 - ((rpm - 5000) / 300) ** 2;

describe("a clean sweep", () => {
  test("a straight line stays where it is, on whole multiples of 50 rpm inside the sweep", () => {
    const run = reduced(sweep((rpm) => 0.05 * rpm));
    expect(run.points.map(({ engineRpm }) => engineRpm)).toEqual(
      Array.from({ length: 90 }, (_, index) => 1550 + 50 * index),
    );
    for (const point of run.points) expect(point.observedPowerKw).toBeCloseTo(0.05 * point.engineRpm, 6);
  });

  test("torque is power over speed, and both are multiplied by the factor", () => {
    const run = reduced(
      sweep(() => 200),
      { factor: 1.05 },
    );
    for (const point of run.points) {
      expect(point.observedTorqueNm * point.engineRpm * K).toBeCloseTo(point.observedPowerKw, 9);
      expect(point.correctedPowerKw).toBeCloseTo(1.05 * point.observedPowerKw, 9);
      expect(point.correctedTorqueNm).toBeCloseTo(1.05 * point.observedTorqueNm, 9);
    }
    expect(run.peakTorque.engineRpm).toBe(1550);
    expect(run.peakPower.value / run.observedPeakPower.value).toBeCloseTo(1.05, 12);
  });

  test("a log that has only torque gives the same curve", () => {
    const withTorque = sweep(hump).map(({ timeS, engineRpm, hubPowerKw = 0 }) => ({
      timeS,
      engineRpm,
      hubTorqueNm: hubPowerKw / (engineRpm * K),
    }));
    expect(reduced(withTorque).peakPower.value).toBeCloseTo(reduced(sweep(hump)).peakPower.value, 9);
  });

  test("torque at the hubs counts at the speed of the hubs", () => {
    const rows = sweep(hump).map(({ timeS, engineRpm, hubPowerKw = 0 }) => ({
      timeS,
      engineRpm,
      hubRpm: engineRpm / 4.1,
      hubTorqueNm: hubPowerKw / ((engineRpm / 4.1) * K),
      hubPowerKw,
    }));
    const run = reduced(rows);
    expect(run.warnings).toEqual([]);
    expect(run.peakTorque.value).toBeCloseTo(reduced(sweep(hump)).peakTorque.value, 6);
  });

  test("duration and ramp rate are those of the sweep", () => {
    const run = reduced(sweep(hump));
    expect(run.durationS).toBeCloseTo(15, 6);
    expect(run.rampRpmPerS).toBeCloseTo(300, 6);
  });
});

describe("smoothing", () => {
  test("never raises the peak, whatever the noise and the width", () => {
    fc.assert(
      fc.property(
        fc.infiniteStream(fc.double({ min: -20, max: 20, noNaN: true })),
        fc.nat(20),
        (noise, width) => {
          const rows = sweep((rpm) => hump(rpm) + (noise.next().value ?? 0));
          const highest = Math.max(...rows.map(({ hubPowerKw = 0 }) => hubPowerKw));
          const run = reduced(rows, { factor: 1, smoothingRpm: width * 50 });
          expect(run.peakPower.value).toBeLessThanOrEqual(highest + 1e-9);
        },
      ),
      { numRuns: 20 },
    );
  });

  test("a slow part of the sweep weighs no more than a fast one", () => {
    const slow = sweep(hump).flatMap((row) =>
      row.engineRpm < 3500 ? Array.from({ length: 9 }, () => row) : [row],
    );
    const [a, b] = [reduced(sweep(hump)), reduced(slow)];
    a.points.forEach((point, index) => {
      expect(b.points[index]?.observedPowerKw).toBeCloseTo(point.observedPowerKw, 6);
    });
  });

  test("noise of 4 kW on ten thousand rows moves the peak by less than 1 kW", () => {
    let seed = 7;
    const random = () => {
      seed = (seed * 16_807) % 2_147_483_647;
      return seed / 2_147_483_647 - 0.5;
    };
    const rows = Array.from({ length: 10_000 }, (_, index) => {
      const engineRpm = 1500 + index * 0.45;
      return {
        timeS: index / 500,
        engineRpm: engineRpm + 10 * random(),
        hubPowerKw: hump(engineRpm) + 8 * random(),
      };
    });
    expect(Math.abs(reduced(rows).peakPower.value - 300)).toBeLessThan(1);
  });
});

describe("what is left out", () => {
  test("idle before, overrun after, a jump of the pick-up and a hole in the data are counted by reason", () => {
    const clean = sweep(hump);
    const idle = Array.from({ length: 50 }, (_, index) => ({
      timeS: index / 100 - 1,
      engineRpm: 800,
      hubPowerKw: 0,
    }));
    const overrun = Array.from({ length: 80 }, (_, index) => ({
      timeS: 15 + index / 100,
      engineRpm: 5850 - index * 40,
      hubPowerKw: 2,
    }));
    const spoilt = clean.map((row, index) => {
      if (index === 300) return { ...row, engineRpm: 12_000 };
      return index === 700 ? { ...row, hubPowerKw: Number.NaN } : row;
    });
    const run = reduced([...idle, ...spoilt, ...overrun]);
    expect(run.excluded).toEqual({
      "not-a-number": 1,
      "speed-spike": 1,
      "not-driving": 50,
      "outside-sweep": 80,
      "outside-band": 0,
    });
    expect(run.rowsRead).toBe(run.rowsUsed + 132);
    expect(run.peakPower.value).toBeCloseTo(reduced(clean).peakPower.value, 1);
  });

  test("a blip of the throttle before the sweep is not taken for it", () => {
    const blip = sweep(() => 40, 1500, 3000).map((row) => ({ ...row, timeS: row.timeS - 20 }));
    const run = reduced([...blip, ...sweep(hump)]);
    expect(run.excluded["outside-sweep"]).toBe(blip.length);
    expect(run.points[0]?.observedPowerKw).toBeCloseTo(
      reduced(sweep(hump)).points[0]?.observedPowerKw ?? 0,
      9,
    );
  });

  test("rows outside the chosen speeds take no part", () => {
    const run = reduced(sweep(hump), { factor: 1, fromRpm: 2000, toRpm: 4000 });
    expect(run.points.at(0)?.engineRpm).toBeGreaterThanOrEqual(2000);
    expect(run.points.at(-1)?.engineRpm).toBeLessThanOrEqual(4000);
    expect(run.excluded["outside-band"]).toBeGreaterThan(0);
  });

  test("a gap in speed stays open and is said", () => {
    const run = reduced(sweep(hump).filter(({ engineRpm }) => engineRpm < 3000 || engineRpm > 3600));
    expect(run.points.some(({ engineRpm }) => engineRpm > 3050 && engineRpm < 3550)).toBe(false);
    expect(run.warnings).toEqual([expect.objectContaining({ code: "gap-in-speed" })]);
  });

  test("time that runs backwards is said", () => {
    const rows = sweep(hump);
    const jumbled = rows.map((row, index) => (index === 400 ? { ...row, timeS: 0 } : row));
    expect(reduced(jumbled).warnings).toEqual([{ code: "time-goes-back", rows: 1 }]);
  });
});

describe("power against torque times speed", () => {
  const logged = (powerScale: number, torqueScale: number) =>
    sweep(hump).map((row) => ({
      ...row,
      hubPowerKw: (row.hubPowerKw ?? 0) * powerScale,
      hubTorqueNm: ((row.hubPowerKw ?? 0) / (row.engineRpm * K)) * torqueScale,
    }));

  test.each([
    [1.019, 1, undefined],
    [1.34102, 1, "power-in-hp"],
    [1.35962, 1, "power-in-ps-or-torque-in-lbft"],
    [1, 0.737562, "power-in-ps-or-torque-in-lbft"],
    [1, 4.1, "torque-at-another-speed"],
  ] as const)("power × %d and torque × %d point to %s", (powerScale, torqueScale, likely) => {
    const [warning] = reduced(logged(powerScale, torqueScale)).warnings;
    expect(warning && "likely" in warning ? warning.likely : undefined).toBe(likely);
    if (warning) expect(explainRunWarning(warning)).toMatch(/times torque/);
  });

  test("a torque channel of something else is called so", () => {
    const rows = sweep(hump).map((row) => ({ ...row, hubTorqueNm: row.engineRpm % 700 }));
    expect(reduced(rows).warnings).toEqual([
      expect.objectContaining({ likely: "channels-do-not-belong-together" }),
    ]);
  });
});

describe("channels", () => {
  test("are carried to the grid, and a short dip counts in the extremes", () => {
    const rows = sweep(hump).map((row) => ({
      ...row,
      lambda: 0.86,
      fuelRailMPa: row.engineRpm >= 5500 && row.engineRpm < 5520 ? 14 : 20,
    }));
    const run = reduced(rows);
    expect(run.points[30]?.lambda).toBeCloseTo(0.86, 9);
    expect(run.points[30]?.boostKPa).toBeNull();
    expect(run.channels.boostKPa).toBeNull();
    expect(run.channels.fuelRailMPa?.least.value).toBeCloseTo(14, 6);
    expect(run.channels.fuelRailMPa?.least.engineRpm).toBeGreaterThan(5490);
  });
});

describe("logs that are no run", () => {
  test.each([
    ["no-rows", []],
    ["no-power-or-torque", [{ timeS: 0, engineRpm: 2000 }]],
    ["no-usable-rows", sweep(() => -5)],
    ["sweep-too-short", sweep(hump, 2000, 2300)],
  ] as const)("%s", (code, rows) => {
    const result = reduceRun(rows, plain);
    expect(result).toMatchObject({ ok: false, refusal: { code } });
    if (!result.ok) expect(explainRunRefusal(result.refusal)).toMatch(/\.$/);
  });

  test.each([{ factor: 0 }, { factor: 1, smoothingRpm: -1 }, { factor: 1, gridRpm: 25 }])(
    "settings %j are refused",
    (settings) => {
      expect(() => runAccumulator(settings)).toThrow(RangeError);
    },
  );
});

test("a million rows are reduced row by row in a few seconds", () => {
  const accumulator = runAccumulator(plain);
  const rows = 1_000_000;
  for (let index = 0; index < rows; index += 1) {
    const engineRpm = 1500 + (index * 4500) / rows;
    accumulator.add({ timeS: index / 1000, engineRpm, hubPowerKw: hump(engineRpm), lambda: 0.86 });
  }
  const result = accumulator.finish();
  expect(result.ok && result.value.rowsUsed).toBe(rows);
}, 10_000);
