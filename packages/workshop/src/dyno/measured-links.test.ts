import { describe, expect, test } from "vitest";
import { abortLimits } from "./abort-limits";
import { measuredLinks, weakestMeasured } from "./measured-links";

const blown = abortLimits({ ignition: "spark", isBoosted: true, isDirectInjected: true });

/** A proof as its figures stand: mixture, rail pressure and intake air at their worst. */
function proof(worst: { lambda: number; fuelRailMPa: number; intakeTempC: number }, peakKw = 366) {
  return {
    figures: {
      peakPower: { engineRpm: 6_000, value: peakKw },
      peakTorque: { engineRpm: 4_200, value: 631 },
      peakBoostKPa: 64,
    },
    readings: blown.map((limit) => ({
      limit,
      reading: {
        value: worst[limit.channel as keyof typeof worst], // The limits of this engine are on these three.
        engineRpm: 5_800,
        grade: "fit" as const,
      },
    })),
  };
}

const held = [{ link: "gearbox", name: "Gearbox", supply: 740, unit: "N·m" }];
const forecast = { powerKw: { low: 350, expected: 368, high: 385 }, boostKPa: 62, chargeC: 60 };
const promise = { lowKw: 350, highKw: 390 };
const usual = { lambda: 0.8, fuelRailMPa: 15.6, intakeTempC: 61 };

describe("the chain as a proof showed it", () => {
  test("sets every channel against its limit, torque against the gearbox, power against the promise", () => {
    const links = measuredLinks(proof(usual), held, forecast, promise);
    const shares = Object.fromEntries(links.map(({ link, measured }) => [link, measured]));
    expect(shares.mixture).toBeCloseTo(0.8 / 0.85, 12);
    expect(shares["high-pressure-pump"]).toBeCloseTo(14 / 15.6, 12);
    expect(shares.cooler).toBeCloseTo(61 / 70, 12);
    expect(shares.gearbox).toBeCloseTo(631 / 740, 12);
    expect(shares.promise).toBeCloseTo(350 / 366, 12);
    expect(shares.engine).toBeNull();
  });

  test("says beside each what was forecast", () => {
    const links = measuredLinks(proof(usual), held, forecast, promise);
    const figures = Object.fromEntries(links.map((each) => [each.link, each.figures]));
    expect(figures.engine).toBe("boost 64 kPa; forecast 62");
    expect(figures.cooler).toBe("61 of at most 70 °C; forecast 60");
    expect(figures.promise).toBe("366 of 350 to 390 kW promised; forecast 350 to 385");
    expect(links.find(({ link }) => link === "cooler")?.forecast).toBeCloseTo(60 / 70, 12);
  });

  test("names as weakest what came nearest to its limit, with where and which", () => {
    const links = measuredLinks(proof({ ...usual, fuelRailMPa: 14.1 }), held, forecast, promise);
    expect(weakestMeasured(links)).toMatchObject({
      link: "high-pressure-pump",
      sentence: "Fuel rail pressure 14.1 MPa at 5,800 rpm, where it may not fall below 14.0.",
    });
  });

  test("names a missed promise only where no limit was passed", () => {
    const missed = measuredLinks(proof(usual, 320), held, forecast, promise);
    expect(weakestMeasured(missed)?.link).toBe("promise");
    const starved = measuredLinks(proof({ ...usual, fuelRailMPa: 13.8 }, 320), held, forecast, promise);
    expect(weakestMeasured(starved)?.link).toBe("high-pressure-pump");
  });

  test("has only what was measured: no promise, no forecast, no channel", () => {
    const { figures } = proof(usual);
    const silent = { figures: { ...figures, peakBoostKPa: null }, readings: [] };
    expect(measuredLinks(silent, [], null, null)).toEqual([]);
    expect(weakestMeasured([])).toBeNull();
  });
});
