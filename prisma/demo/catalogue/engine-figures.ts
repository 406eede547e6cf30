import type { Figures, ModelId } from "./types";

/*
 * What the engineering needs to know of each model's engine, air, fuel system and torque limits. All invented; the
 * rated curves agree with what a healthy vehicle shows at the hubs, the fuel stages with the bases of the capacities.
 */

type Pairs = readonly (readonly [speedRpm: number, figure: number])[];

const powers = (...pairs: Pairs) => pairs.map(([speedRpm, powerKw]) => ({ speedRpm, powerKw }));
export const overSpeed = (...pairs: Pairs) => pairs.map(([speedRpm, value]) => ({ speedRpm, value }));

/** At 5 bar and 12.8 V it passes the figure of the capacity rule. */
export function tankPump(flowLPerH: number) {
  return {
    kind: "tank-pump",
    points: [
      { pressureKPa: 300, flowLPerH: Math.round(flowLPerH * 1.17) },
      { pressureKPa: 500, flowLPerH },
      { pressureKPa: 700, flowLPerH: Math.round(flowLPerH * 0.8) },
    ],
    systemPressureKPa: 500,
  };
}

/** Three strokes of the cam; 0.393 cm³ each passes 133 kg/h of petrol at 6,000 rpm, what the capacity rule has. */
export function camPump(strokeCm3: number) {
  return {
    kind: "high-pressure-pump",
    displacementCm3PerCamRev: Number((3 * strokeCm3).toFixed(3)),
    camRatio: 0.5,
    volumetricEfficiency: overSpeed([3_000, 0.9], [6_000, 0.845]),
  };
}

const ridgewold: Figures = {
  engine: {
    redlineRpm: 6_500,
    // Referred to the density in the manifold: 0.98 at 6,000 rpm, elsewhere in proportion to the gross torque of the
    // rated curve, because air makes torque.
    volumetricEfficiency: overSpeed(
      [1_500, 0.83],
      [2_000, 0.9],
      [2_500, 0.97],
      [3_000, 1.01],
      [4_300, 1.07],
      [5_000, 1.05],
      [6_000, 0.98],
      [6_500, 0.93],
    ),
    ratedAtCrank: powers(
      [1_200, 50],
      [2_000, 95],
      [2_500, 127],
      [3_000, 161],
      [3_500, 196],
      [4_000, 231],
      [4_500, 261],
      [5_000, 283],
      [5_500, 295],
      [5_700, 296],
      [6_000, 294],
      [6_400, 287],
    ),
  },
  air: { inletDropKPa: 3 },
  fuel: {
    stages: [
      tankPump(275),
      camPump(0.393),
      // 5 ms of window at 6,000 rpm.
      {
        kind: "direct-injectors",
        count: 8,
        staticFlowGPerS: 23.5,
        ratedPressureKPa: 10_000,
        railKPa: 20_000,
        cylinderKPa: 1_500,
        windowDeg: 180,
        deadTimeMs: 0.3,
      },
    ],
  },
  // The gearbox's own controller asks the engine for no more than this.
  caps: [{ id: "gearbox", name: "The gearbox controller", torqueNm: 700 }],
};

const vale: Figures = {
  engine: {
    redlineRpm: 4_200,
    volumetricEfficiency: 0.9,
    ratedAtCrank: powers(
      [1_200, 36],
      [1_500, 57],
      [1_800, 82],
      [2_200, 106],
      [2_600, 122],
      [3_000, 124],
      [3_400, 127],
      [3_800, 122],
      [4_200, 112],
    ),
  },
  air: { inletDropKPa: 3 },
  fuel: {
    stages: [
      tankPump(160),
      {
        kind: "high-pressure-pump",
        displacementCm3PerCamRev: 1,
        camRatio: 0.5,
        volumetricEfficiency: overSpeed([1_500, 0.88], [4_200, 0.82]),
      },
      {
        kind: "direct-injectors",
        count: 4,
        staticFlowGPerS: 14,
        ratedPressureKPa: 10_000,
        railKPa: 180_000,
        cylinderKPa: 12_000,
        windowDeg: 45,
        deadTimeMs: 0.3,
      },
    ],
  },
  caps: [{ id: "gearbox", name: "The gearbox controller", torqueNm: 600 }],
};

const orrismere: Figures = {
  engine: {
    redlineRpm: 6_600,
    volumetricEfficiency: overSpeed(
      [1_500, 0.78],
      [2_000, 0.84],
      [3_000, 0.95],
      [4_500, 1.06],
      [6_000, 0.96],
      [6_600, 0.9],
    ),
    ratedAtCrank: powers(
      [1_500, 51],
      [2_000, 73],
      [2_500, 98],
      [3_000, 125],
      [3_500, 152],
      [4_000, 180],
      [4_500, 208],
      [5_000, 227],
      [5_500, 239],
      [5_800, 240],
      [6_000, 240],
      [6_500, 234],
    ),
    // Two driven wheels drag less than four.
    assume: { dragKwAt6000: 14, dragBandKw: 4 },
  },
  air: { inletDropKPa: 3 },
  fuel: {
    stages: [
      tankPump(240),
      // The regulator follows the manifold, so the pressure across them stays. 16 of 20 ms at 6,000 rpm.
      {
        kind: "port-injectors",
        count: 8,
        staticFlowCm3PerMin: 410,
        ratedPressureKPa: 300,
        railKPa: 400,
        manifoldKPa: 0,
        dutyLimit: 0.8,
      },
    ],
  },
  caps: [],
};

const bramlet: Figures = {
  engine: {
    redlineRpm: 6_200,
    volumetricEfficiency: overSpeed([1_500, 0.82], [4_000, 1], [5_300, 0.97], [6_000, 0.9]),
    ratedAtCrank: powers(
      [1_200, 18],
      [2_000, 33],
      [2_500, 44],
      [3_000, 55],
      [3_500, 65],
      [4_000, 76],
      [4_500, 85],
      [5_000, 89],
      [5_300, 89],
      [5_700, 88],
      [6_000, 86],
    ),
    // The standard map is set for petrol 91 and holds the spark back.
    assume: { dragKwAt6000: 10, dragBandKw: 3, baselineRetardDeg: 5 },
  },
  air: { inletDropKPa: 2 },
  fuel: {
    stages: [
      tankPump(110),
      {
        kind: "port-injectors",
        count: 4,
        staticFlowCm3PerMin: 260,
        ratedPressureKPa: 300,
        railKPa: 350,
        manifoldKPa: 0,
        dutyLimit: 0.85,
      },
    ],
  },
  caps: [],
};

export const engineFigures: Readonly<Record<ModelId, Figures>> = {
  "ridgewold-57": ridgewold,
  "ridgewold-57-lift": ridgewold,
  "vale-30td": vale,
  "orrismere-gt44": orrismere,
  "bramlet-trail-20": bramlet,
};
