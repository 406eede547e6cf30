import { describe, expect, test } from "vitest";
import { demoForecast, demoModelFigures, forecasted } from "../testing/demo-forecast";
import { askedTorqueNm, forecastOfItems } from "./forecast-of-items";
import type { MeasuredBaseline } from "./power-baseline";

const boosted = ["blower-24-92", "charge-cooler"];

const points = (peakKw: number) =>
  [2_000, 3_000, 4_000, 5_000, 6_000].map((speedRpm) => ({
    speedRpm,
    powerKw: peakKw * (speedRpm / 6_000) ** 0.9,
  }));
const measured: MeasuredBaseline = {
  sessionId: "0190a000-0000-7000-8000-000000000000",
  doneOn: "2026-11-20",
  runs: 3,
  spreadPct: 0.4,
  corrected: points(250),
  observed: points(240),
  code: "SAE J1349",
};

describe("what a forecast rests on", () => {
  test("is the vehicle's own baseline where one stands, corrected for a petrol engine", () => {
    const { baseline, points: curve } = forecasted("ridgewold-57", boosted, { measured });
    expect(baseline).toMatchObject({ source: "measured", sessionId: measured.sessionId });
    expect(curve.at(-1)?.baselineKw).toBe(250);
    expect(baseline.sentence).toContain("Fri, 20 Nov 2026, mean of 3 runs, corrected to SAE J1349");
  });

  test("is the run as observed for a turbo-diesel, up to its own highest speed", () => {
    const { points: curve } = forecasted("vale-30td", ["tow-calibration-diesel"], { measured });
    expect(curve.map(({ speedRpm }) => speedRpm)).toEqual([2_000, 3_000, 4_000]);
    expect(curve[0]?.baselineKw).toBeCloseTo(240 * (1 / 3) ** 0.9, 2);
  });

  test("is the maker's rating less the driveline otherwise, and its band is wider", () => {
    const small = ["blower-19-88", "charge-cooler"];
    const rated = forecasted("ridgewold-57", small);
    const own = forecasted("ridgewold-57", small, { measured });
    expect(rated.baseline).toMatchObject({ source: "rated", sessionId: null });
    const widthAt5000 = ({ points: curve }: typeof rated) => {
      const at = curve.find(({ speedRpm }) => speedRpm === 5_000)?.powerKw;
      return at ? (at.high - at.low) / at.expected : Number.NaN;
    };
    expect(widthAt5000(rated)).toBeGreaterThan(widthAt5000(own));
  });

  test("is what was changed on this build, in place of what is usual", () => {
    const { assumptions, power } = forecasted("ridgewold-57", boosted, { given: { retardAt60KPaDeg: 14 } });
    expect(assumptions.find(({ name }) => name === "retardAt60KPaDeg")).toMatchObject({
      usual: 11,
      used: 14,
      isChanged: true,
    });
    expect(power.expected).toBeLessThan(forecasted("ridgewold-57", boosted).power.expected);
  });

  test("names only the assumptions that have a say in it", () => {
    const blown = forecasted("ridgewold-57", boosted).assumptions.map(({ name }) => name);
    const diesel = forecasted("vale-30td", ["tow-calibration-diesel"]).assumptions.map(({ name }) => name);
    expect(blown).toContain("retardAt60KPaDeg");
    expect(blown).not.toContain("dieselLambda");
    expect(diesel).toContain("dieselLambda");
    expect(diesel).not.toContain("retardAt60KPaDeg");
  });
});

describe("what cannot be forecast says in one sentence what is missing", () => {
  test("a model without its engine figures", () => {
    const { engine: _, ...rest } = demoModelFigures("ridgewold-57");
    expect(demoForecast("ridgewold-57", boosted, { modelFigures: rest, modelName: "Ridgewold 5.7" })).toEqual(
      {
        kind: "missing",
        sentence:
          "No forecast: the catalogue lacks the rated curve and the filling of the Ridgewold 5.7; the owner can add it.",
      },
    );
  });

  test("an item whose figures cannot be read", () => {
    const odd = [{ code: "odd", name: "Odd blower", figures: { blower: { kind: "displacement" } } }];
    const vehicle = {
      fuelKind: "petrol",
      fuelOctane: 98,
      modelName: "Ridgewold 5.7",
      modelFigures: demoModelFigures("ridgewold-57"),
      measured: null,
      designAmbientC: 43,
      altitudeM: 0,
      given: {},
    } as const;
    expect(forecastOfItems(vehicle, odd, new Set(["odd"]))).toEqual({
      kind: "missing",
      sentence:
        "No forecast: the figures of Odd blower in the catalogue cannot be read; the owner can mend them.",
    });
  });

  test("a blower on a diesel", () => {
    expect(demoForecast("vale-30td", ["blower-24-92"])).toEqual({
      kind: "missing",
      sentence: "No forecast: a blower is forecast for spark ignition only.",
    });
  });

  test("figures that no engine has, in the calculation's own words", () => {
    const forecast = demoForecast("ridgewold-57", boosted, { given: { meshEfficiency: 1.2 } });
    expect(forecast).toMatchObject({ kind: "missing" });
    expect(forecast.kind === "missing" && forecast.sentence).toContain("meshEfficiency must be between");
  });
});

describe("the torque that the rules judge", () => {
  test("is what the engine would make if no controller held it", () => {
    const free = askedTorqueNm(demoForecast("ridgewold-57", [...boosted, "hp-pump-upgrade"]));
    expect(free).toBeGreaterThan(700);
    expect(askedTorqueNm(demoForecast("ridgewold-57", boosted))).toBe(free);
  });

  test("is nothing where no item changes the engine", () => {
    expect(askedTorqueNm(demoForecast("ridgewold-57", ["dark-trim"]))).toBe(0);
  });
});
