import { expect, test } from "vitest";
import { absoluteFromGauge, kilopascalsAbsolute, kilopascalsGauge } from "./pressure";
import { celsius, kelvin, kelvinFromCelsius } from "./temperature";

test("no quantity is NaN or infinite", () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) expect(() => kelvin(value)).toThrow(RangeError);
});

test("no pressure is below vacuum and no temperature below absolute zero", () => {
  expect(() => kilopascalsAbsolute(-0.1)).toThrow(RangeError);
  expect(() => celsius(-273.2)).toThrow(RangeError);
  expect(kelvinFromCelsius(celsius(25))).toBe(298.15);
});

test("boost is measured from the air around it", () => {
  expect(absoluteFromGauge(kilopascalsGauge(69), kilopascalsAbsolute(100))).toBe(169);
});
