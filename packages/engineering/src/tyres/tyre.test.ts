import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { speedometer } from "./speedometer";
import { tyre } from "./tyre";

describe("the three forms", () => {
  test("metric with a service description", () => {
    expect(tyre("285/65R18 116T")).toMatchObject({
      overallDiameterMm: 827,
      exactDiameterMm: 827.7,
      sectionWidthMm: 285,
      rimDiameterIn: 18,
      aspectPct: 65,
      loadIndex: 116,
      loadKg: 1250,
      speedSymbol: "T",
      speedKmh: 190,
    });
  });

  test("with two load indices the single one counts", () => {
    expect(tyre("LT285/70R17 121/118S")).toMatchObject({ loadIndex: 121, dualLoadIndex: 118, loadKg: 1450 });
  });

  test("flotation is nominal inches, unrounded", () => {
    const answer = tyre("33x12.50R18LT 118Q");
    expect(answer).toMatchObject({ overallDiameterMm: 838.2, exactDiameterMm: 838.2, sectionWidthMm: 317.5 });
    expect(answer.revsPerKm).toBeCloseTo(1e6 / (3.05 * 838.2), 9);
  });

  test("without a service description nothing is said about load and speed", () => {
    expect(tyre("265/70R17")).toMatchObject({
      loadIndex: null,
      loadKg: null,
      speedSymbol: null,
      speedKmh: null,
    });
  });

  test.each([" 285 / 65 r 18  116t ", "285/65R18 XL 116T", "285/65R18 116T XL"])(
    "%s is read as it is meant",
    (designation) => {
      expect(tyre(designation)).toMatchObject({ overallDiameterMm: 827, loadIndex: 116, speedSymbol: "T" });
    },
  );
});

describe("what is not understood", () => {
  test.each([
    ["265/70Q17", "unknown-designation", "metric, as in 285/65R18 116T"],
    ["LT265-70R17", "unknown-designation", "light-truck metric, as in LT285/70R17 121/118S"],
    ["33x12,50R18", "unknown-designation", "flotation, as in 33x12.50R18LT 118Q"],
    ["285/65R18 116", "unknown-designation", "metric"],
    ["", "unknown-designation", "metric"],
    ["265/15R17", "out-of-range", "aspect ratio"],
    ["265/70R45", "out-of-range", "rim diameter"],
    ["95x12.50R18", "out-of-range", "overall diameter"],
    ["285/65R18 280T", "unknown-service-description", "load index 280"],
    ["285/65R18 116I", "unknown-service-description", "speed symbol I"],
  ])("%s is refused as %s", (designation, code, words) => {
    expect(() => tyre(designation)).toThrow(expect.objectContaining({ code, path: "designation" }));
    expect(() => tyre(designation)).toThrow(words);
  });
});

describe("sizes and speeds move the right way", () => {
  const width = fc.integer({ min: 21, max: 91 }).map((step) => step * 5);
  const aspect = fc.integer({ min: 4, max: 19 }).map((step) => step * 5);
  const rim = fc.integer({ min: 10, max: 29 });

  test("wider, taller or on a larger rim: larger overall, within 2 mm of the exact size", () => {
    fc.assert(
      fc.property(width, aspect, rim, (w, a, r) => {
        const at = (change: readonly [number, number, number]) =>
          tyre(`${change[0]}/${change[1]}R${change[2]}`);
        const base = at([w, a, r]);
        expect(Math.abs(base.overallDiameterMm - base.exactDiameterMm)).toBeLessThanOrEqual(1.5);
        expect(at([w, a + 5, r]).overallDiameterMm).toBeGreaterThan(base.overallDiameterMm);
        expect(at([w, a, r + 1]).overallDiameterMm).toBeGreaterThan(base.overallDiameterMm);
        expect(at([w, a + 5, r]).revsPerKm).toBeLessThan(base.revsPerKm);
      }),
    );
  });

  test("every load index carries at least what the one below it carries", () => {
    const loads = Array.from({ length: 280 }, (_, index) => tyre(`265/70R17 ${index}S`).loadKg ?? Number.NaN);
    expect(loads.every((load, at) => at === 0 || load > (loads[at - 1] ?? 0))).toBe(true);
  });

  test("a larger tyre makes the same speedometer read lower", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 200, noNaN: true }),
        fc.integer({ min: -10, max: 20 }),
        (shown, error) => {
          const ask = (fittedTyre: string) =>
            speedometer({
              indicatedKmh: shown,
              standardTyre: "265/70R17",
              fittedTyre,
              standardErrorPct: error,
            });
          expect(ask("285/70R17").errorPct).toBeLessThan(ask("265/70R17").errorPct);
          expect(ask("265/70R17").errorPct).toBeCloseTo(error, 9);
          expect(ask("285/70R17").recalibrationNeeded).toBe(!ask("285/70R17").meetsUnR39);
        },
      ),
    );
  });
});

describe("speedometer questions that do not go together", () => {
  const tyres = { standardTyre: "265/70R17", fittedTyre: "285/70R17", standardErrorPct: 3 };
  test.each([
    [{ indicatedKmh: 100 }, "missing-field", "standardTyre"],
    [{ indicatedKmh: 100, trueKmh: 97, fittedTyre: "285/70R17" }, "two-ways", "trueKmh"],
    [{ indicatedKmh: 100, ...tyres, standardErrorPct: undefined }, "missing-field", "standardErrorPct"],
    [{ indicatedKmh: 0, ...tyres }, "out-of-range", "indicatedKmh"],
    [{ indicatedKmh: 100, trueKmh: 0 }, "out-of-range", "trueKmh"],
    [{ indicatedKmh: Number.NaN, trueKmh: 97 }, "out-of-range", "indicatedKmh"],
    [{ indicatedKmh: 100, trueKmh: Number.POSITIVE_INFINITY }, "out-of-range", "trueKmh"],
    [{ indicatedKmh: -100, ...tyres }, "out-of-range", "indicatedKmh"],
    [{ indicatedKmh: 100, ...tyres, standardErrorPct: Number.NaN }, "out-of-range", "standardErrorPct"],
    [{ indicatedKmh: -1, trueKmh: 50 }, "out-of-range", "indicatedKmh"],
    [{ indicatedKmh: Number.NaN, trueKmh: 50 }, "out-of-range", "indicatedKmh"],
    [{ indicatedKmh: 100, ...tyres, standardErrorPct: -100 }, "out-of-range", "standardErrorPct"],
    [{ indicatedKmh: 100, ...tyres, fittedTyre: "big ones" }, "unknown-designation", "fittedTyre"],
  ] as const)("%j is refused as %s at %s", (question, code, path) => {
    expect(() => speedometer(question)).toThrow(expect.objectContaining({ code, path }));
  });
});
