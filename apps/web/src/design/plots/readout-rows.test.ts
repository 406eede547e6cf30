import { expect, test } from "vitest";
import { readoutRows } from "./readout-rows";

const points = [{ engineRpm: 4_000, powerKw: 200, torqueNm: 477 }];

test("a measured run is one line of the read-out", () => {
  expect(readoutRows([{ id: "baseline", label: "Baseline", points }])).toEqual([
    { id: "baseline", label: "Baseline", points },
  ]);
});

test("a forecast is never read out without its lower and upper end", () => {
  const range = [{ engineRpm: 4_000, powerKw: { low: 190, high: 210 }, torqueNm: { low: 454, high: 501 } }];
  const rows = readoutRows([{ id: "forecast", label: "Forecast", points, range }]);
  expect(rows.map(({ label }) => label)).toEqual(["Forecast, low", "Forecast, expected", "Forecast, high"]);
  expect(rows[0]?.points).toEqual([{ engineRpm: 4_000, powerKw: 190, torqueNm: 454 }]);
  expect(rows[2]?.points).toEqual([{ engineRpm: 4_000, powerKw: 210, torqueNm: 501 }]);
});
