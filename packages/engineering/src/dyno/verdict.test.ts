import { describe, expect, test } from "vitest";
import { explainVerdict } from "./explain-verdict";
import { gain } from "./gain";
import type { ReducedRun } from "./reduced-run";
import { repeatability } from "./repeatability";
import { reduceRun } from "./run-accumulator";
import { verdict } from "./verdict";

/** A made run whose corrected peak is `peakKw` at 5000 rpm. */
function run(peakKw: number, { factor = 1, correctionValid = true, toRpm = 6000 } = {}): ReducedRun {
  const rows = Array.from({ length: (toRpm - 1500) / 2 + 1 }, (_, index) => {
    const engineRpm = 1500 + 2 * index;
    return {
      timeS: index / 100,
      engineRpm,
      hubPowerKw: (peakKw / factor) * (1 - ((engineRpm - 5000) / 7000) ** 2),
    };
  });
  const result = reduceRun(rows, { factor, correctionValid, smoothingRpm: 0 });
  if (!result.ok) throw new Error(result.refusal.code);
  return result.value;
}

describe("repeatability", () => {
  test("three runs within 2 % of their mean are repeatable", () => {
    const answer = repeatability([run(300), run(303), run(306)]);
    expect(answer.peakSpreadPct).toBeCloseTo((100 * 6) / 303, 3);
    expect(answer.meanSpreadPct).toBeCloseTo((100 * 6) / 303, 3);
    expect(answer).toMatchObject({ runs: 3, enoughRuns: true, repeatable: true, limitPct: 2 });
  });

  test("a spread just over 2 % is not", () => {
    expect(repeatability([run(300), run(303), run(306.2)]).repeatable).toBe(false);
  });

  test("two runs are never enough, however close", () => {
    expect(repeatability([run(300), run(300)])).toMatchObject({ enoughRuns: false, repeatable: false });
    expect(repeatability([])).toMatchObject({ runs: 0, repeatable: false, commonBand: null });
  });

  test("the mean is taken over the speeds that all runs reached", () => {
    const answer = repeatability([run(300), run(300, { toRpm: 5500 }), run(300)]);
    expect(answer.commonBand).toEqual({ fromRpm: 1550, toRpm: 5500 });
    expect(answer.meanSpreadPct).toBeCloseTo(0, 4);
  });

  test("runs on different grids are not mixed", () => {
    expect(() => repeatability([run(300), { ...run(300), gridRpm: 100 }])).toThrow(RangeError);
  });
});

describe("gain", () => {
  test("is taken between the mean curves", () => {
    const answer = gain([run(280), run(282), run(284)], [run(370), run(372), run(374)]);
    expect(answer?.peakPowerKw).toBeCloseTo(90, 3);
    expect(answer?.peakPowerPct).toBeCloseTo((100 * 90) / 282, 3);
    expect(answer).toMatchObject({ demonstrated: true, showObservedFirst: false });
    expect(answer?.greatestAt.engineRpm).toBe(5000);
  });

  test("under 2 % is not demonstrated", () => {
    expect(gain([run(300)], [run(305)])?.demonstrated).toBe(false);
  });

  test("shows the observed gain first when the corrections differ", () => {
    const answer = gain([run(300, { factor: 1 })], [run(360, { factor: 1.05 })]);
    expect(answer?.showObservedFirst).toBe(true);
    expect(answer?.observedPeakPowerKw).toBeCloseTo(360 / 1.05 - 300, 3);
  });

  test("there is none without runs on both sides", () => {
    expect(gain([], [run(300)])).toBeNull();
  });
});

describe("verdict", () => {
  const promise = { lowKw: 350, highKw: 390 };
  const three = (peakKw: number, how = {}) => [run(peakKw - 1, how), run(peakKw, how), run(peakKw + 1, how)];

  test.each([
    [three(370), "kept", "within-the-promise"],
    [three(350.01), "kept", "within-the-promise"],
    [three(400), "kept", "above-the-promise"],
    [three(349), "missed", "below-the-promise"],
    [three(370).slice(0, 2), "not-demonstrated", "too-few-runs"],
    [[], "not-demonstrated", "too-few-runs"],
    [[run(360), run(370), run(380)], "not-demonstrated", "runs-do-not-agree"],
    [three(370, { correctionValid: false }), "not-demonstrated", "correction-out-of-limits"],
  ] as const)("case %#: %s", (runs, outcome, reason) => {
    const answer = verdict(promise, runs);
    expect(answer).toMatchObject({ outcome, reason });
    expect(explainVerdict(answer)).toMatch(/^(Kept|Missed|Not demonstrated): .*\.$/);
  });

  test("says the shortfall", () => {
    const answer = verdict(promise, three(340));
    expect(answer.aboveLowKw).toBeCloseTo(-10, 3);
    expect(explainVerdict(answer)).toBe(
      "Missed: 340 kW measured, 350 kW to 390 kW promised; short by 10 kW.",
    );
  });

  test("a promise has a low end and a high end", () => {
    expect(() => verdict({ lowKw: 390, highKw: 350 }, [])).toThrow(RangeError);
  });
});
