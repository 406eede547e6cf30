import { dynoCorrection } from "@buildproof/engineering";
import type { ModelId } from "../catalogue/types";
import { type EngineCurves, engineCurves, type LogKind } from "./engine-curves";
import { runTimeline } from "./run-timeline";
import { type SeededRandom, seededRandom } from "./seeded-random";
import { smoothCurve } from "./smooth-curve";

export interface CellAir {
  readonly barometerKPa: number;
  readonly airTempC: number;
  readonly relativeHumidityPct: number;
}

export interface MadeLogOrder {
  readonly seed: number;
  readonly model: ModelId;
  readonly kind: LogKind;
  readonly runs?: number;
  readonly hz?: number;
  readonly rampRpmPerS?: number;
  /** Deviation of one sample of torque, as a share of it. */
  readonly noise?: number;
  /** Scales the curve: one vehicle is a little better than the next. */
  readonly level?: number;
  readonly air?: CellAir;
}

export const warmAfternoon: CellAir = { barometerKPa: 99.2, airTempC: 31, relativeHumidityPct: 30 };

const header =
  "run,time_s,engine_rpm,hub_rpm,hub_power_kw,hub_torque_nm,boost_kpa,lambda,fuel_rail_mpa,intake_temp_c";

/** Each run finds the engine a little warmer than the last. */
const LOST_PER_RUN = 0.0035;
/** One sample in so many has a fault of the speed pick-up. */
const ROWS_PER_SPIKE = 2_500;

/** A made dyno log as CSV text: the invented vehicle's full-load curve, swept, warmed, noisy, and observed rather than corrected. */
export function makeDynoLog(order: MadeLogOrder): string {
  const { seed, model, kind, runs = 3, hz = 200, rampRpmPerS = 400, noise = 0.008, level = 1 } = order;
  const air = order.air ?? warmAfternoon;
  const engine = engineCurves(model, kind);
  const random = seededRandom(seed);
  const observedShare = level / (engine.corrected ? correctionFactor(air) : 1);
  const sample = sampler(engine, air, noise, random);
  const { lastsS, momentAt } = runTimeline(engine, rampRpmPerS);
  const lines = [header];
  for (let run = 1; run <= runs; run += 1) {
    const share = observedShare * (1 - LOST_PER_RUN * (run - 1)) * (1 + 0.0008 * random.normal());
    for (let index = 0; index < lastsS * hz; index += 1) {
      const timeS = index / hz;
      lines.push(`${run},${timeS.toFixed(3)},${sample(momentAt(timeS), share, run)}`);
    }
  }
  return `${lines.join("\n")}\n`;
}

function correctionFactor(air: CellAir): number {
  return dynoCorrection({ standard: "SAE_J1349", ignition: "spark", aspiration: "natural", ...air }).factor;
}

function sampler(engine: EngineCurves, air: CellAir, noise: number, random: SeededRandom) {
  const torqueAt = smoothCurve(engine.torqueNm);
  const boostAt = smoothCurve(engine.boostKPa);
  const lambdaAt = smoothCurve(engine.lambda);
  const railAt = smoothCurve(engine.fuelRailMPa);
  const riseAt = smoothCurve(engine.intakeRiseK);
  return (moment: { engineRpm: number; load: number }, share: number, run: number): string => {
    const { engineRpm, load } = moment;
    const engineTorque = torqueAt(engineRpm) * load * share * (1 + noise * random.normal());
    const hubTorqueNm = (engineTorque + 0.6 * random.normal()) * engine.ratio;
    const hubRpm = engineRpm / engine.ratio;
    const hubPowerKw = (hubTorqueNm * hubRpm * 2 * Math.PI) / 60_000;
    const open = Math.max(0, load);
    const spike = random.next() < 1 / ROWS_PER_SPIKE ? 900 : 0;
    return [
      (engineRpm + spike + 4 * random.normal()).toFixed(0),
      (hubRpm + 0.8 * random.normal()).toFixed(1),
      hubPowerKw.toFixed(2),
      hubTorqueNm.toFixed(1),
      (boostAt(engineRpm) * open - 62 * Math.max(0, 0.5 - open) + 0.5 * random.normal()).toFixed(1),
      (1 + (lambdaAt(engineRpm) - 1) * open + 0.006 * random.normal()).toFixed(3),
      (railAt(engineRpm) * (0.35 + 0.65 * open) * (1 + 0.006 * random.normal())).toFixed(2),
      (
        air.airTempC +
        riseAt(engineRpm) * (0.4 + 0.6 * open) +
        1.5 * (run - 1) +
        0.3 * random.normal()
      ).toFixed(1),
    ].join(",");
  };
}
