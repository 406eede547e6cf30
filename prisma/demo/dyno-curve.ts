import type { RunRow } from "@buildproof/engineering";
import { catalogue } from "./catalogue/catalogue";
import type { ModelId } from "./catalogue/types";
import type { SeededRandom } from "./seeded-random";

/** What a vehicle makes at the hubs in reference air, and what its other channels read. */
export type HubFigures = {
  readonly model: ModelId;
  readonly peakKw: number;
  readonly peakNm: number;
  /** At the highest engine speed; 0 for a standard engine. */
  readonly boostKPa: number;
};

const LOWEST_RPM = 1_600;
const HIGHEST_RPM = 6_000;
const STEP_RPM = 50;
const RAMP_RPM_PER_S = 400;
const RADIANS_PER_S_PER_RPM = Math.PI / 30;
/** Spread of one sweep against the next on a good dyno: common practice, no source. */
const RUN_DEVIATION = 0.004;
const ROW_DEVIATION = 0.003;

/** A standard, healthy vehicle of that model. */
export function standardFigures(model: ModelId): HubFigures {
  const known = catalogue.models.find(({ id }) => id === model);
  if (!known) throw new Error(`the demo catalogue has no model ${model}`);
  return { model, peakKw: known.usualHubPowerKw, peakNm: known.usualHubTorqueNm, boostKPa: 0 };
}

/** One sweep as a log would have it, observed in air that the factor corrects for. */
export function sweepRows(figures: HubFigures, factor: number, random: SeededRandom): RunRow[] {
  const fall = fallForPeakPower(figures);
  const level = random.normal(1, RUN_DEVIATION);
  const rows: RunRow[] = [];
  for (let engineRpm = LOWEST_RPM; engineRpm <= HIGHEST_RPM; engineRpm += STEP_RPM) {
    const torque = (torqueAt(figures, engineRpm, fall) * level * random.normal(1, ROW_DEVIATION)) / factor;
    const along = (engineRpm - LOWEST_RPM) / (HIGHEST_RPM - LOWEST_RPM);
    rows.push({
      timeS: round((engineRpm - LOWEST_RPM) / RAMP_RPM_PER_S, 3),
      engineRpm,
      hubTorqueNm: round(torque, 2),
      hubPowerKw: round((torque * engineRpm * RADIANS_PER_S_PER_RPM) / 1_000, 3),
      boostKPa: round(figures.boostKPa * (0.55 + 0.45 * along) + random.normal(0, 0.4), 1),
      lambda: round(0.88 - (figures.boostKPa > 0 ? 0.08 : 0.02) * along + random.normal(0, 0.004), 3),
      fuelRailMPa: round(17.2 - (figures.boostKPa / 64) * 0.8 * along + random.normal(0, 0.05), 2),
      intakeTempC: round(32 + (figures.boostKPa / 64) * 28 * along + random.normal(0, 0.3), 1),
    });
  }
  return rows;
}

/** Rises gently to its peak at 4,000 rpm, then falls as the parabola that leaves the wanted peak power. */
function torqueAt({ peakNm }: HubFigures, engineRpm: number, fall: number): number {
  const from = (engineRpm - 4_000) / 2_000;
  return peakNm * (1 - (from < 0 ? 0.11 : fall) * from * from);
}

function fallForPeakPower(figures: HubFigures): number {
  const peakKw = (fall: number) => {
    let most = 0;
    for (let rpm = LOWEST_RPM; rpm <= HIGHEST_RPM; rpm += STEP_RPM) {
      most = Math.max(most, (torqueAt(figures, rpm, fall) * rpm * RADIANS_PER_S_PER_RPM) / 1_000);
    }
    return most;
  };
  let [low, high] = [-0.5, 0.9];
  for (let halving = 0; halving < 30; halving += 1) {
    const middle = (low + high) / 2;
    // A steeper fall means less power.
    if (peakKw(middle) > figures.peakKw) low = middle;
    else high = middle;
  }
  return low;
}

const round = (value: number, decimals: number) => Number(value.toFixed(decimals));
