import { expect, test } from "vitest";
import { amountOn } from "./capacity-amount";

const pump = { whole: 385, lessFact: "lowPressureFuelLPerH" };

test("a plain amount is what it is on every vehicle", () => {
  expect(amountOn({ lowPressureFuelLPerH: 275 }, 40)).toBe(40);
});

test("a whole part brings the difference to what leaves this vehicle, and all of itself where nothing does", () => {
  expect(amountOn({ lowPressureFuelLPerH: 275 }, pump)).toBe(110);
  expect(amountOn({ lowPressureFuelLPerH: 240 }, pump)).toBe(145);
  expect(amountOn({}, pump)).toBe(385);
});

test("a lesser part than the standard one takes away", () => {
  expect(amountOn({ lowPressureFuelLPerH: 400 }, pump)).toBe(-15);
});
