import { camPump, overSpeed, tankPump } from "./engine-figures";
import type { Figures } from "./types";

/*
 * What the engineering needs to know of the items that change air, fuel, calibration or exhaust, by item. Invented,
 * in agreement with the notes of the items and the demands of the capacities.
 */

/** Leakage at low speed makes the delivery less. */
const delivery = overSpeed([1_500, 0.74], [2_000, 0.81], [3_000, 0.88], [6_000, 0.92]);

function blower(displacementLPerRev: number, crankPulleyMm: number, blowerPulleyMm: number): Figures {
  return {
    blower: {
      kind: "displacement",
      displacementLPerRev,
      volumetricEfficiency: delivery,
      adiabaticEfficiency: 0.64,
      maxSpeedRpm: 14_000,
      drive: { crankPulleyMm, blowerPulleyMm, internalRatio: 1, maxBeltSpeedMPerS: 65 },
    },
  };
}

/** Another pulley on a blower that is chosen beside it. */
function pulley(of: string, ...size: Parameters<typeof blower>): Figures {
  const { blower: turned } = blower(...size);
  return typeof turned === "object" ? { blower: { ...turned, needs: of } } : {};
}

export const powerItemFigures: Readonly<Record<string, Figures>> = {
  "blower-24-92": blower(2.4, 175, 92),
  "blower-19-88": blower(1.9, 175, 88),
  "blower-19-80": blower(1.9, 175, 80),
  "blower-19-gt44": blower(1.9, 150, 88),
  "pulley-24-98": pulley("blower-24-92", 2.4, 175, 98),
  "pulley-24-86": pulley("blower-24-92", 2.4, 175, 86),
  "pulley-19-84": pulley("blower-19-88", 1.9, 175, 84),
  "pulley-gt44-96": pulley("blower-19-gt44", 1.9, 150, 96),
  "charge-cooler": {
    chargeCooler: { effectiveness: 0.72, coolantOverAmbientC: 20, pressureDropKPa: 5 },
  },
  "charge-cooler-hot-kit": {
    chargeCooler: {
      effectiveness: 0.85,
      coolantOverAmbientC: 12,
      pressureDropKPa: 5,
      needs: "charge-cooler",
    },
  },
  // 40 kg/h more at 6,000 rpm than the standard stroke.
  "hp-pump-upgrade": { fuelStages: [camPump(0.511)] },
  // 90 kg/h beside the direct injectors.
  "port-injection-kit": {
    fuelStages: [
      {
        kind: "port-injectors",
        count: 8,
        staticFlowCm3PerMin: 280,
        ratedPressureKPa: 300,
        railKPa: 400,
        manifoldKPa: 64,
        dutyLimit: 0.85,
      },
    ],
  },
  // The regulator follows the manifold, as with the standard ones of 410 cm³/min.
  "port-injectors-gt44": {
    fuelStages: [
      {
        kind: "port-injectors",
        count: 8,
        staticFlowCm3PerMin: 600,
        ratedPressureKPa: 300,
        railKPa: 400,
        manifoldKPa: 0,
        dutyLimit: 0.8,
      },
    ],
  },
  "tank-pump-upgrade": { fuelStages: [tankPump(385)] },
  "runs-on-e10": { burns: { fuel: "E10" } },
  "runs-on-e85": { burns: { fuel: "E85" } },
  "map-95": { burns: { octaneNumber: 95 } },
  "tow-calibration-diesel": {
    calibration: {
      torqueRequestNm: overSpeed(
        [1_200, 330],
        [1_500, 410],
        [1_800, 520],
        [2_200, 560],
        [2_800, 530],
        [4_200, 300],
      ),
      smokeLambda: 1.2,
      exhaustLimitC: 720,
    },
  },
  // What cools the charge by 8 °C cools the exhaust by as much.
  "ute-intercooler": { assume: { dieselChargeC: 42, dieselExhaustC: 632 } },
  "gearbox-calibration": {
    caps: [
      { id: "gearbox", name: "The gearbox calibration", torqueNm: 740 },
      { id: "gearbox-low", name: "The gearbox calibration", torqueNm: 680, gears: [1, 2, 3] },
    ],
  },
  // With renewed clutches the calibration allows more.
  "gearbox-clutch-packs": {
    caps: [
      { id: "gearbox", name: "The gearbox calibration", torqueNm: 860 },
      { id: "gearbox-low", name: "The gearbox calibration", torqueNm: 780, gears: [1, 2, 3] },
    ],
  },
  "cat-back-exhaust": { assume: { backPressureKPaAt6000: 12 } },
  "cat-back-gt44": { assume: { backPressureKPaAt6000: 13 } },
  "cat-back-20": { breathing: { fillingGain: 1.015, backPressureKPaAt6000: 9 } },
  "calibration-20": { breathing: { retardDeg: 1 } },
  "headers-gt44": { assume: { backPressureKPaAt6000: 11 } },
};
