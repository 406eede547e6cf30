import {
  absoluteFromGauge,
  type KilopascalsAbsolute,
  kilopascalsAbsolute,
  kilopascalsGauge,
} from "@buildproof/units";
import { expect, test } from "vitest";

/** Ratio of outlet to inlet, which has a meaning only between absolute pressures. */
function pressureRatio(outlet: KilopascalsAbsolute, inlet: KilopascalsAbsolute): number {
  return outlet / inlet;
}

test("a gauge reading is not taken for an absolute pressure", () => {
  const ambient = kilopascalsAbsolute(100);
  const boost = kilopascalsGauge(69);
  // @ts-expect-error gauge boost is not an absolute pressure, and 0.69 is not the ratio
  expect(pressureRatio(boost, ambient)).toBe(0.69);
  expect(pressureRatio(absoluteFromGauge(boost, ambient), ambient)).toBe(1.69);
});

test("a plain number is not a pressure until its constructor has seen it", () => {
  // @ts-expect-error a plain number carries no meaning
  expect(pressureRatio(169, kilopascalsAbsolute(100))).toBe(1.69);
});
