import type { ModelId } from "./types";

/*
 * Driveline, masses and road figures of the five vehicles. Invented, and chosen so that they agree with one
 * another and with the facts of models.ts: payload and front-axle spare are what these leave with every seat
 * taken by 75 kg. Plates of real vehicles come first.
 */

export type ModelChassis = {
  readonly driveline: {
    /** From first to top. */
    readonly gearRatios: readonly number[];
    readonly finalDrive: number;
    /** High range. */
    readonly transferRatio: number;
    readonly shiftTimeS: number;
  };
  readonly tyre: {
    /** What the speedometer shows over the true speed on the standard tyre, as measured. */
    readonly speedometerOverPct: number;
    /** Where the speed is taken: at the gearbox a final drive moves it too. */
    readonly speedTakenAt: "gearbox" | "wheels";
  };
  readonly masses: {
    readonly kerbFrontKg: number;
    readonly kerbRearKg: number;
    readonly frontRatingKg: number;
    readonly rearRatingKg: number;
    readonly gvmKg: number;
    readonly gcmKg: number;
    readonly brakedTowKg: number;
    readonly unbrakedTowKg: number;
    readonly ballLimitKg: number;
    readonly wheelbaseMm: number;
    readonly ballBehindRearAxleMm: number;
    readonly gravityHeightMm: number;
    /** Rows from the front: how many sit there, and how much of them the front axle carries. */
    readonly seatRows: readonly { readonly seats: number; readonly frontAxleShare: number }[];
  };
  readonly road: {
    /** Limited by its controller, or by its power. */
    readonly topSpeedKmh: number;
    readonly dragCoefficient: number;
    readonly frontalAreaM2: number;
    readonly rollingCoefficient: number;
    readonly rotatingFactor: number;
    readonly gripCoefficient: number;
  };
};

const ridgewold: ModelChassis = {
  driveline: {
    gearRatios: [4.8, 3.05, 1.98, 1.4, 1, 0.86, 0.77],
    finalDrive: 3.36,
    transferRatio: 1,
    shiftTimeS: 0.2,
  },
  tyre: { speedometerOverPct: 1, speedTakenAt: "wheels" },
  masses: {
    kerbFrontKg: 1370,
    kerbRearKg: 1270,
    frontRatingKg: 1680,
    rearRatingKg: 2000,
    gvmKg: 3350,
    gcmKg: 6600,
    brakedTowKg: 3500,
    unbrakedTowKg: 750,
    ballLimitKg: 350,
    wheelbaseMm: 2850,
    ballBehindRearAxleMm: 1200,
    gravityHeightMm: 720,
    seatRows: [
      { seats: 2, frontAxleShare: 0.5 },
      { seats: 3, frontAxleShare: 0.2 },
    ],
  },
  road: {
    topSpeedKmh: 180,
    dragCoefficient: 0.38,
    frontalAreaM2: 3.1,
    rollingCoefficient: 0.013,
    rotatingFactor: 1.08,
    gripCoefficient: 0.85,
  },
};

export const modelChassis: Readonly<Record<ModelId, ModelChassis>> = {
  "ridgewold-57": ridgewold,
  "ridgewold-57-lift": {
    ...ridgewold,
    tyre: { speedometerOverPct: 2, speedTakenAt: "wheels" },
    // Tyres, spare and lift: 63 kg, a little over half of it behind.
    masses: { ...ridgewold.masses, kerbFrontKg: 1394, kerbRearKg: 1309, gravityHeightMm: 770 },
    road: { ...ridgewold.road, topSpeedKmh: 160, dragCoefficient: 0.4, frontalAreaM2: 3.2 },
  },
  "vale-30td": {
    driveline: {
      gearRatios: [4.1, 2.35, 1.55, 1.15, 0.86, 0.69],
      finalDrive: 3.7,
      transferRatio: 1,
      shiftTimeS: 0.3,
    },
    tyre: { speedometerOverPct: 3, speedTakenAt: "wheels" },
    masses: {
      kerbFrontKg: 1231,
      kerbRearKg: 889,
      frontRatingKg: 1570,
      rearRatingKg: 1850,
      gvmKg: 3035,
      gcmKg: 5850,
      brakedTowKg: 3500,
      unbrakedTowKg: 750,
      ballLimitKg: 350,
      wheelbaseMm: 3100,
      ballBehindRearAxleMm: 1250,
      gravityHeightMm: 680,
      seatRows: [
        { seats: 2, frontAxleShare: 0.5 },
        { seats: 3, frontAxleShare: 0.24 },
      ],
    },
    road: {
      topSpeedKmh: 170,
      dragCoefficient: 0.4,
      frontalAreaM2: 2.9,
      rollingCoefficient: 0.013,
      rotatingFactor: 1.1,
      gripCoefficient: 0.8,
    },
  },
  "orrismere-gt44": {
    driveline: {
      gearRatios: [3.2, 2.15, 1.5, 1.14, 0.86, 0.64],
      finalDrive: 3.45,
      transferRatio: 1,
      shiftTimeS: 0.35,
    },
    tyre: { speedometerOverPct: 4, speedTakenAt: "wheels" },
    masses: {
      kerbFrontKg: 890,
      kerbRearKg: 825,
      frontRatingKg: 1150,
      rearRatingKg: 1250,
      gvmKg: 2250,
      gcmKg: 3600,
      brakedTowKg: 1600,
      unbrakedTowKg: 750,
      ballLimitKg: 160,
      wheelbaseMm: 2780,
      ballBehindRearAxleMm: 1150,
      gravityHeightMm: 530,
      seatRows: [
        { seats: 2, frontAxleShare: 0.5 },
        { seats: 3, frontAxleShare: 0.2 },
      ],
    },
    road: {
      topSpeedKmh: 250,
      dragCoefficient: 0.31,
      frontalAreaM2: 2.2,
      rollingCoefficient: 0.011,
      rotatingFactor: 1.06,
      gripCoefficient: 0.95,
    },
  },
  "bramlet-trail-20": {
    driveline: { gearRatios: [4, 2.25, 1.45, 1, 0.84], finalDrive: 4.3, transferRatio: 1, shiftTimeS: 0.4 },
    tyre: { speedometerOverPct: 3, speedTakenAt: "gearbox" },
    masses: {
      kerbFrontKg: 740,
      kerbRearKg: 650,
      frontRatingKg: 935,
      rearRatingKg: 1000,
      gvmKg: 1760,
      gcmKg: 2900,
      brakedTowKg: 1200,
      unbrakedTowKg: 600,
      ballLimitKg: 100,
      wheelbaseMm: 2250,
      ballBehindRearAxleMm: 900,
      gravityHeightMm: 640,
      seatRows: [
        { seats: 2, frontAxleShare: 0.5 },
        { seats: 2, frontAxleShare: 0.2 },
      ],
    },
    road: {
      topSpeedKmh: 150,
      dragCoefficient: 0.45,
      frontalAreaM2: 2.4,
      rollingCoefficient: 0.014,
      rotatingFactor: 1.1,
      gripCoefficient: 0.8,
    },
  },
};
