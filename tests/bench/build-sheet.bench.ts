import {
  acceleration,
  type BlowerQuestion,
  blower,
  type FuelStage,
  fuelHeadroom,
  powerForecast,
} from "@buildproof/engineering";
import { curvedDisplacement, sampleBlower, sampleWagon } from "@buildproof/engineering/samples";
import type { Benchmark } from "./benchmark";

/** 60 speeds of the invented demo wagon. */
const speedsRpm = Array.from({ length: 60 }, (_, at) => 600 + at * 100);

const build: BlowerQuestion = { ...sampleBlower, blower: curvedDisplacement, speedsRpm };

const stages: readonly FuelStage[] = [
  {
    kind: "tank-pump",
    points: [
      { pressureKPa: 300, flowLPerH: 340 },
      { pressureKPa: 600, flowLPerH: 240 },
    ],
    systemPressureKPa: 500,
  },
  { kind: "high-pressure-pump", displacementCm3PerCamRev: 1.179, volumetricEfficiency: 0.86 },
];

function ours() {
  const { points: air } = blower(build);
  const headroom = fuelHeadroom({ fuel: "petrol", stages, air, sweepLambda: 0.8, sustainedLambda: 0.77 });
  const forecast = powerForecast({
    baseline: { at: "hubs", points: speedsRpm.map((speedRpm) => ({ speedRpm, powerKw: 0.045 * speedRpm })) },
    compressionRatio: 11,
    fuel: "petrol",
    injection: "direct",
    blower: build,
    fuelSupply: { stages },
    hotDay: { tempC: 45, pressureKPa: 98 },
  });
  return { headroom, forecast, before: road(1), after: road(1.25) };
}

/** From rest to 120 km/h and over 400 m, with the engine as it is or stronger by a share. */
function road(share: number) {
  const curve = sampleWagon.curve.map(({ speedRpm, powerKw }) => ({ speedRpm, powerKw: powerKw * share }));
  return acceleration({ ...sampleWagon, curve, targetsKmh: [80, 100, 120], distancesM: [400] });
}

/** Thirty rounds of the mass balance by substitution at each speed: no bracket, fuel, power, band or hot day. */
function substitution(): number {
  let sum = 0;
  for (const speed of speedsRpm) {
    const flow = (0.92 * 2.4 * speed * (175 / 92) * (97_000 / (287.055 * 298.15))) / 60_000;
    const density = (flow * 120_000) / (0.98 * 5.7 * speed);
    let ratio = 1;
    for (let round = 0; round < 30; round += 1) {
      const discharge = 298.15 * (1 + (ratio ** (2 / 7) - 1) / 0.64);
      ratio = ((density * 287.055 * (discharge - 0.72 * (discharge - 318.15))) / 1_000 + 5) / 97;
    }
    sum += ratio;
  }
  return sum;
}

/**
 * All that the build sheet asks together: air, fuel with both loads, the forecast with its band and hot day, and the
 * road before and after.
 */
export const buildSheetBenchmark: Benchmark = {
  name: "build sheet, 60 speeds",
  ours: { name: "air, fuel, forecast, road", run: ours },
  baseline: { name: "substitution alone", run: substitution },
  limits: { ms: 3 },
};
