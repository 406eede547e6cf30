import { expect, test } from "vitest";
import { saltbush } from "./demo-sites";
import { packageItems } from "./package-items";
import { priceSelection } from "./price-selection";

// Hours of the trade: common practice, no source. Sold apart 36.8 h; together 22.4 h of their own and 7.4 h of access.
test("a blower with all that goes with it takes 29.8 hours, 7.0 of them saved by sharing access", () => {
  const priced = priceSelection(saltbush, [
    "blower-24-92",
    "charge-cooler",
    "crank-pin-kit",
    "belt-10-rib",
    "hp-pump-upgrade",
    "plugs-two-step",
    "boost-calibration",
  ]);
  expect(priced.labourHours).toBe(29.8);
  expect(priced.savedHours).toBe(7);
});

test("lines add up to the quote, and the deposit covers what cannot go back", () => {
  const priced = priceSelection(saltbush, packageItems("long-grade-24"), 2.5);
  const sum = (measure: "netMinor" | "taxMinor" | "grossMinor") =>
    priced.lines.reduce((total, line) => total + line[measure], 0);
  expect(sum("netMinor")).toBe(priced.netMinor);
  expect(sum("taxMinor")).toBe(priced.taxMinor);
  expect(sum("grossMinor")).toBe(priced.grossMinor);
  // GST is a tenth of the value of the supply (A New Tax System (Goods and Services Tax) Act 1999, s 9-70).
  expect(priced.taxMinor).toBe(Math.round(priced.netMinor / 10));
  expect(priced.depositMinor).toBeGreaterThanOrEqual(priced.nonReturnableMinor);
});
