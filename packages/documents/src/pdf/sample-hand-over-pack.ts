import type { DynoFigures, MeasuredState } from "./dyno-figures";
import type { HandOverPackDocument } from "./hand-over-pack-document";
import { sampleQuote } from "./sample-quote";

const air = { barometerKPa: 99.2, airTempC: 31, relativeHumidityPct: 30, factor: 1.0257, runs: 3 } as const;

const state = (peakKw: number, peakNm: number, spreadPct: number, measuredOn: string): MeasuredState => ({
  ...air,
  spreadPct,
  measuredOn,
  peakPowerKw: peakKw,
  peakPowerRpm: 5_900,
  peakTorqueNm: peakNm,
  peakTorqueRpm: 4_300,
  powerKw: Array.from({ length: 83 }, (_, index) => {
    const speedRpm = 1_950 + 50 * index;
    return { speedRpm, value: peakKw * Math.sin((Math.PI / 2) * (speedRpm / 5_900) ** 1.15) };
  }),
});

/** Invented figures of the invented vehicle. */
export const sampleDyno: DynoFigures = {
  at: "hubs",
  correction: "SAE J1349",
  smoothingRpm: 200,
  baseline: state(261, 498, 0.98, "2025-12-04"),
  proof: state(366, 631, 0.97, "2025-12-12"),
  promise: { lowKw: 350, highKw: 390 },
  verdict: "Promise kept: 366 kW at the hubs, 16 kW above the lower figure, three runs within 1.0 %.",
};

export const sampleHandOverPack: HandOverPackDocument = {
  workshop: sampleQuote.workshop,
  customer: sampleQuote.customer,
  vehicle: sampleQuote.vehicle,
  jobNumber: "318",
  quote: { number: "1042", version: 2 },
  handedOverOn: "2025-12-15",
  madeAt: "2025-12-15T16:05:00+10:30",
  workDone: [
    "Pre-build inspection with baseline: passed.",
    "Long Grade 2.4 fitted: blower, charge cooler, fuel pump, plugs, belt drive, crank pin.",
    "Engine and gearbox calibrations loaded; calibrated on the hub dyno, revision 2 released.",
    "Road test of 41 km, all readiness monitors complete, no code pending.",
  ],
  parts: [
    { name: "Blower kit 2.4 L/rev, 92 mm pulley", code: "Pellavane PV-24-92", serial: "24-11873" },
    { name: "High-pressure fuel pump upgrade", code: "Vellis VL-HP40", serial: "HP40-0662" },
    { name: "Licence credit, engine controller", code: "Ellverin EV-CR1", serial: "CR1-90417-BX" },
    { name: "Charge cooler kit, twin fan", code: "Quoinard QN-CC2" },
  ],
  torques: [
    {
      what: "Manifold bolts, final pass",
      value: 25.2,
      unit: "N·m",
      low: 23,
      high: 27,
      by: "Tamsin Oyelaran",
      at: "8 December 2025, 14:10",
    },
    {
      what: "New high-pressure pipe, pump end",
      value: 30,
      unit: "N·m",
      low: 28,
      high: 32,
      by: "Tamsin Oyelaran",
      at: "9 December 2025, 09:35",
    },
    {
      what: "New crank bolt, turned further",
      value: 120,
      unit: "°",
      low: 118,
      high: 122,
      by: "Tamsin Oyelaran; seen by Piet Marrun",
      at: "8 December 2025, 11:20",
    },
  ],
  dyno: sampleDyno,
  certificates: [
    { name: "Engineering certificate", number: "SA-25-1180", signedBy: "R. Abara", on: "2025-12-14" },
  ],
  cautions: [
    "A dealer software update overwrites the calibration: tell them first, and us after.",
    "On a 43 °C day expect about a tenth less power and stay off full load while towing uphill.",
    "Weigh the combination before the first trip: the ball load counts against the payload.",
  ],
  followUps: [
    { what: "Re-torque visit, in the price", when: "at 500 to 1,000 km, booked for 12 January 2026" },
  ],
};
