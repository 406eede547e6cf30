import { vin } from "@buildproof/compliance";
import { capacityUse } from "@buildproof/prerequisites";
import { labour, quoteTotals } from "@buildproof/pricing";
import { minorUnits, unitConvert } from "@buildproof/units";
import type { LinePlot } from "./line-plot";

export function powerUnitsPlot(): LinePlot {
  const kilowatts = Array.from({ length: 11 }, (_, at) => at * 50);
  return {
    title: "The same power in horsepower, metric and of 550 ft·lbf/s",
    x: { label: "kW", ticks: [0, 100, 200, 300, 400, 500] },
    y: { label: "PS, hp", ticks: [0, 200, 400, 600, 800] },
    lines: [
      { label: "PS", points: kilowatts.map((kw) => [kw, unitConvert(kw, "kW", "PS")]), dash: "8 4" },
      { label: "hp", points: kilowatts.map((kw) => [kw, unitConvert(kw, "kW", "hp")]) },
    ],
  };
}

/** The characters of position 10 in the order of their years. */
const YEAR_CODES = "ABCDEFGHJKLMNPRSTVWXY123456789";

export function modelYearPlot(): LinePlot {
  const years = (position7: string) =>
    [...YEAR_CODES].map((code, at) => {
      const [year = Number.NaN] = vin(`1AAAAA${position7}A0${code}A000001`).modelYears;
      return [at + 1, year - 1_980] as const;
    });
  return {
    title: "Model year by the character of position 10, North America",
    x: { label: "place among A to Y, 1 to 9, without I, O, Q, U and Z", ticks: [0, 5, 10, 15, 20, 25, 30] },
    y: { label: "1980 +", ticks: [0, 10, 20, 30, 40, 50, 60] },
    lines: [
      { label: "letter in position 7", points: years("A"), dash: "8 4" },
      { label: "digit in position 7", points: years("1") },
    ],
  };
}

/** The page's own example, and two more operations behind the same front end. */
export function labourPlot(): LinePlot {
  const access = [
    { id: "undertray", hours: 0.3 },
    { id: "front", hours: 2.2, needs: ["undertray"] },
    { id: "coolant", hours: 0.9, needs: ["undertray"] },
  ];
  const operations = [11.5, 4.2, 1.1, 0.8].map((hours, at) => ({
    id: `operation-${at}`,
    hours,
    access: ["front", "coolant"],
  }));
  const counts = [1, 2, 3, 4];
  const first = (count: number) => labour({ access, operations: operations.slice(0, count) });
  return {
    title: "Hours of one visit: blower, cooler, belt, plugs behind one front end",
    x: { label: "operations", ticks: [1, 2, 3, 4] },
    y: { label: "hours", ticks: [0, 10, 20, 30, 40] },
    lines: [
      {
        label: "each apart",
        points: counts.map((count) => [count, first(count).hours + first(count).savedHours]),
        dash: "8 4",
      },
      { label: "together", points: counts.map((count) => [count, first(count).hours]) },
    ],
  };
}

export function taxRoundingPlot(): LinePlot {
  const counts = Array.from({ length: 21 }, (_, at) => at);
  const taxMinor = (count: number, rounding: "line" | "total") =>
    count === 0
      ? 0
      : quoteTotals({
          currency: "AED",
          jurisdiction: "AE",
          rounding,
          pricesIncludeTax: false,
          lines: Array.from({ length: count }, () => ({
            quantity: 1,
            unitPriceMinor: minorUnits(110),
            taxCategory: "S" as const,
          })),
        }).taxMinor;
  return {
    title: "Tax of 5 % on equal lines of 1.10, rounded on each line or once",
    x: { label: "lines", ticks: [0, 5, 10, 15, 20] },
    y: { label: "fils", ticks: [0, 30, 60, 90, 120] },
    lines: [
      { label: "on each line", points: counts.map((count) => [count, taxMinor(count, "line")]), dash: "8 4" },
      { label: "once", points: counts.map((count) => [count, taxMinor(count, "total")]) },
    ],
  };
}

export function headroomPlot(): LinePlot {
  const demands = Array.from({ length: 17 }, (_, at) => 100 + at * 5);
  const headroom = (supply: number) =>
    demands.map((demand) => {
      const [use] = capacityUse(
        {
          items: [{ id: "pump" }, { id: "engine" }],
          rules: [{ id: "fuel", kind: "capacity", supply: { pump: supply }, demand: { engine: demand } }],
        },
        ["pump", "engine"],
      );
      return [demand, 100 * (use?.headroom ?? Number.NaN)] as const;
    });
  return {
    title: "Headroom over what is asked, of the standard pump and of the larger one",
    x: { label: "asked, kg/h", ticks: [100, 120, 140, 160, 180] },
    y: { label: "%", ticks: [-40, -20, 0, 20, 40, 60, 80] },
    lines: [
      { label: "173 kg/h", points: headroom(173), dash: "8 4" },
      { label: "133 kg/h", points: headroom(133) },
    ],
  };
}
