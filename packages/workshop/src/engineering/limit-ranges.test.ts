import type { ForecastLimit } from "@buildproof/engineering";
import { expect, test } from "vitest";
import { forecasted } from "../testing/demo-forecast";
import { limitRanges } from "./limit-ranges";

const point = (speedRpm: number, limit: ForecastLimit) => ({
  speedRpm,
  limit,
  because: `${limit} at ${speedRpm}`,
  baselineKw: 100,
  lowKw: 100,
  expectedKw: 110,
  highKw: 120,
  crankTorqueNm: 300,
  boostKPa: null,
  manifoldTempC: null,
  sparkRetardDeg: null,
  fuelKgPerH: 30,
});
const headlines = (...limits: readonly (readonly [number, ForecastLimit])[]) =>
  limitRanges(limits.map(([speed, limit]) => point(speed, limit))).map(({ headline }) => headline);

test("neighbouring speeds with one limit stand together, in words", () => {
  expect(headlines([3_000, "air"], [4_800, "air"], [5_100, "fuel"], [6_000, "fuel"])).toEqual([
    "air to 4,800 rpm",
    "fuel from 5,100 rpm",
  ]);
});

test("one limit everywhere, one in between, and one at a single speed", () => {
  expect(headlines([3_000, "smoke"], [4_000, "smoke"])).toEqual(["smoke at every speed"]);
  expect(headlines([2_000, "air"], [3_000, "torque-cap"], [4_000, "torque-cap"], [5_000, "air"])).toEqual([
    "air to 2,000 rpm",
    "torque limit from 3,000 rpm to 4,000 rpm",
    "air from 5,000 rpm",
  ]);
  expect(headlines([2_000, "air"], [3_000, "knock"], [4_000, "air"])[1]).toBe("knock at 3,000 rpm");
});

test("the stretches of a whole forecast follow on one another without a gap", () => {
  const { limits, points } = forecasted("ridgewold-57", ["blower-24-92", "charge-cooler"]);
  expect(limits[0]?.fromRpm).toBe(points[0]?.speedRpm);
  expect(limits.at(-1)?.toRpm).toBe(points.at(-1)?.speedRpm);
  const speeds = points.map(({ speedRpm }) => speedRpm);
  limits.slice(1).forEach(({ fromRpm }, at) => {
    expect(speeds.indexOf(fromRpm)).toBe(speeds.indexOf(limits[at]?.toRpm ?? 0) + 1);
  });
});
