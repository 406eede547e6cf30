import { describe, expect, test } from "vitest";
import { commonDomain, PANEL_WIDTH, panelGeometry } from "./panel-geometry";
import { nearestSample, readoutSamples } from "./readout-samples";
import { peakOf, valueAt } from "./value-at";

const run = [
  { x: 2000, y: 100 },
  { x: 4000, y: 300 },
  { x: 6000, y: 200 },
];

const panel = {
  series: [{ id: "proof", points: run }],
  xDomain: [2000, 6000],
  heightPx: 200,
  fromZero: true,
  tickCount: 4,
} as const;

describe("a panel of the overlay", () => {
  test("stands on zero and reaches the highest point", () => {
    const { ticks, lines } = panelGeometry(panel);
    expect(ticks[0]).toEqual({ value: 0, y: 200 });
    expect(lines[0]?.peak).toMatchObject({ x: 4000, value: 300, across: 0.5, y: 0 });
  });

  test("runs from edge to edge of its width", () => {
    const path = panelGeometry(panel).lines[0]?.path ?? "";
    expect(path.startsWith("M0,")).toBe(true);
    expect(path).toContain(`L${PANEL_WIDTH},`);
  });

  test("makes room for a limit that no run reaches", () => {
    const { limits, lines } = panelGeometry({ ...panel, limits: [{ label: "gearbox", value: 740 }] });
    expect(limits[0]?.y).toBeGreaterThanOrEqual(0);
    expect(limits[0]?.y).toBeLessThan(lines[0]?.peak?.y ?? 0);
  });

  test("draws a strip that hovers around a value without dragging it down to zero", () => {
    const mixture = {
      ...panel,
      fromZero: false,
      series: [
        {
          id: "a",
          points: [
            { x: 2000, y: 0.8 },
            { x: 6000, y: 0.9 },
          ],
        },
      ],
    };
    expect(panelGeometry(mixture).ticks[0]?.value).toBeGreaterThan(0.7);
  });

  test("draws nothing, and does not fail, for a run without points", () => {
    const empty = panelGeometry({ ...panel, series: [{ id: "none", points: [] }] });
    expect(empty.lines[0]).toMatchObject({ path: "", peak: null });
    expect(commonDomain([[]])).toEqual([0, 1]);
  });
});

describe("reading a value off a curve", () => {
  test("is linear between two points and silent outside them", () => {
    expect(valueAt(run, 3000)).toBe(200);
    expect(valueAt(run, 6000)).toBe(200);
    expect(valueAt(run, 1999)).toBeNull();
    expect(valueAt([], 3000)).toBeNull();
  });

  test("finds the peak", () => {
    expect(peakOf(run)).toEqual({ x: 4000, y: 300 });
    expect(peakOf([])).toBeNull();
  });

  test("stops every 50 rpm, whatever the curves' own points", () => {
    const samples = readoutSamples({
      xDomain: [2010, 2130],
      series: [
        [
          [
            { x: 2010, y: 0 },
            { x: 2110, y: 100 },
          ],
        ],
      ],
    });
    expect(samples).toEqual([
      { rpm: 2050, values: [[40]] },
      { rpm: 2100, values: [[90]] },
    ]);
    expect(nearestSample(samples, 2140)).toBe(1);
  });
});
