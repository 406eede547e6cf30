import { describe, expect, test } from "vitest";
import { catalogue } from "../../../../prisma/demo/catalogue/catalogue";
import { demoForecast, forecasted } from "../testing/demo-forecast";

/* Invented figures for the demo; what they are held against is common practice, no source. */
const packaged = (id: string) => catalogue.packages.find((each) => each.id === id)?.items ?? [];

describe("every demo model", () => {
  test.each(catalogue.models.map(({ id, usualHubPowerKw }) => [id, usualHubPowerKw] as const))(
    "%s: its rating less the driveline is what a healthy one shows at the hubs, within 2 %",
    (id, usualHubPowerKw) => {
      const forecast = demoForecast(id, []);
      if (forecast.kind !== "unchanged") throw new Error(forecast.kind);
      const { low, expected, high } = forecast.asItStands;
      expect(Math.abs(expected / usualHubPowerKw - 1)).toBeLessThan(0.02);
      expect(low).toBeLessThan(usualHubPowerKw);
      expect(high).toBeGreaterThan(usualHubPowerKw);
    },
  );

  test.each([
    ["ridgewold-57", packaged("long-grade-24")],
    ["ridgewold-57-lift", packaged("long-haul-19")],
    ["orrismere-gt44", ["blower-19-gt44", "charge-cooler", "boost-calibration"]],
    ["vale-30td", ["tow-calibration-diesel"]],
  ] as const)(
    "%s is forecast with its items, always with a band and a hot day that is no stronger",
    (id, codes) => {
      const { power, torque, hotDay, points, assumptions } = forecasted(id, codes);
      for (const each of [power, torque, ...points.map(({ powerKw }) => powerKw)]) {
        expect(each.low).toBeLessThanOrEqual(each.expected);
        expect(each.expected).toBeLessThanOrEqual(each.high);
      }
      expect(power.low).toBeLessThan(power.high);
      expect(hotDay.tempC).toBe(43);
      expect(hotDay.power.expected).toBeLessThan(power.expected);
      expect(assumptions.length).toBeGreaterThan(10);
    },
  );

  test("the small 4WD gains a few kilowatts by a freer exhaust with its calibration, each adding its part", () => {
    const [exhaust, calibration, both] = [
      ["cat-back-20"],
      ["calibration-20"],
      ["cat-back-20", "calibration-20"],
    ].map((items) => forecasted("bramlet-trail-20", items));
    const gain = (forecast: typeof both) => {
      const at = forecast?.points.find(({ speedRpm }) => speedRpm === forecast.power.speedRpm);
      return at ? at.powerKw.expected - at.baselineKw : Number.NaN;
    };
    expect(both).toMatchObject({ change: "breathing", boost: null });
    expect(gain(both)).toBeGreaterThan(1.5);
    expect(gain(both)).toBeLessThan(6);
    expect(gain(both)).toBeCloseTo(gain(exhaust) + gain(calibration), 0);
    expect(both?.fuel.sweep.isShort).toBe(false);
    expect(both?.assumptions.map(({ name }) => name)).toContain("baselineRetardDeg");
    expect(both?.assumptions.map(({ name }) => name)).not.toContain("retardAt60KPaDeg");
    const { fromAirKgPerH, fromPowerKgPerH } = both?.fuel.demand ?? { fromAirKgPerH: 0, fromPowerKgPerH: 0 };
    expect(Math.abs((fromAirKgPerH ?? 0) / fromPowerKgPerH - 1)).toBeLessThan(0.12);
  });

  test("the small 4WD's other items do not change its engine, and the sheet says so", () => {
    expect(demoForecast("bramlet-trail-20", ["lift-35-bramlet", "mid-section-20"])).toMatchObject({
      kind: "unchanged",
      sentence: "No chosen item changes the engine's power.",
    });
  });
});

describe("the promise of a package", () => {
  const promised = catalogue.packages.flatMap(({ id, models, promise }) =>
    promise ? models.map((model) => [id, model, promise] as const) : [],
  );

  test.each(promised)("%s on %s overlaps the band of its forecast", (id, model, promise) => {
    const { power } = forecasted(model, packaged(id));
    expect(power.low).toBeLessThan(promise.highKw);
    expect(power.high).toBeGreaterThan(promise.lowKw);
  });
});

describe("the 2.4 L blower", () => {
  const boosted = ["blower-24-92", "charge-cooler"];

  test("gives the boost of its note at 6,000 rpm: 64 kPa within 1 kPa", () => {
    const at6000 = forecasted("ridgewold-57", boosted).points.find(({ speedRpm }) => speedRpm === 6_000);
    expect(Math.abs((at6000?.boostKPa ?? 0) - 64)).toBeLessThan(1);
  });

  test("on the standard pump is short of fuel from about 4,750 rpm by about 9 %, and says which stage", () => {
    const { fuel, limits } = forecasted("ridgewold-57", boosted);
    expect(fuel.sweep.sentence).toMatch(/^High-pressure pump from 4,7[05]0 rpm: short by [89] %\.$/);
    expect(fuel.sustained.isShort).toBe(true);
    expect(limits.at(-1)).toMatchObject({ limit: "fuel" });
  });

  test("with the pump upgrade has about the 18 % to spare of the chain", () => {
    const { fuel, limits } = forecasted("ridgewold-57", [...boosted, "hp-pump-upgrade"]);
    const pump = fuel.sweep.stages.find(({ kind }) => kind === "high-pressure-pump");
    expect(pump?.headroom).toBeGreaterThan(0.15);
    expect(pump?.headroom).toBeLessThan(0.22);
    expect(limits.map(({ limit }) => limit)).not.toContain("fuel");
  });

  test("asks the gearbox for more than its controller gives, which holds it there", () => {
    const { askedOfGearbox, limits, points } = forecasted("ridgewold-57", [...boosted, "hp-pump-upgrade"]);
    expect(askedOfGearbox.torqueNm).toBeGreaterThan(700);
    expect(Math.max(...points.map(({ crankNm }) => crankNm))).toBeLessThanOrEqual(700);
    expect(limits.find(({ limit }) => limit === "torque-cap")?.because).toMatch(
      /^The gearbox controller holds/,
    );
  });

  test("with the gearbox calibration is held in the low gears, and the sheet says over which speeds", () => {
    const { gears } = forecasted("ridgewold-57", packaged("long-grade-24"));
    expect(gears).toEqual([
      expect.stringMatching(
        /^In gears 1, 2 and 3 the gearbox calibration holds 680 N·m at the crank, from [\d,]+ rpm to/,
      ),
    ]);
  });

  test("without a charge cooler is limited by the heat of the charge", () => {
    expect(forecasted("ridgewold-57", ["blower-24-92"]).limits[0]).toMatchObject({
      limit: "charge-temperature",
    });
  });

  test("tells the fuel from its air and from its power within a tenth of one another", () => {
    const { demand } = forecasted("ridgewold-57", packaged("long-grade-24")).fuel;
    expect(Math.abs(demand.fromPowerKgPerH / (demand.fromAirKgPerH ?? 0) - 1)).toBeLessThan(0.1);
  });
});

describe("poorer fuel", () => {
  test("takes spark, and with it power; E10 is taken as 95 octane", () => {
    const small = ["blower-19-88", "charge-cooler"];
    const on98 = forecasted("ridgewold-57", small).power.expected;
    const on95 = forecasted("ridgewold-57", [...small, "map-95"], { fuelOctane: 95 });
    expect(on95.power.expected).toBeLessThan(on98);
    expect(on95.reference).toMatch(/^petrol 95, 25 °C/);
    const onE10 = forecasted("ridgewold-57", small, { fuelKind: "e10", fuelOctane: null });
    expect(onE10.assumptions.find(({ name }) => name === "octaneNumber")?.used).toBe(95);
  });
});
