import type { ForecastQuestion } from "@buildproof/engineering";
import type { PowerBaseline } from "./power-baseline";
import type { Assumed, PowerChange } from "./power-change";
import type { ModelFigures } from "./stored-figures";

/** The air in which forecasts are told and runs are corrected to: 25 °C, 99 kPa of dry air and 1 kPa of vapour. */
export const referenceAir = { tempC: 25, pressureKPa: 100 } as const;

type Ambient = NonNullable<ForecastQuestion["hotDay"]>;

const STEP_RPM = 100;

/** The engineering's question for a changed engine; null when no chosen item changes its power. */
export function forecastQuestionOf(
  model: ModelFigures,
  change: PowerChange,
  baseline: PowerBaseline,
  options: { readonly hotDay: Ambient; readonly assumptions: Assumed },
): ForecastQuestion | null {
  if (!change.blower && !change.calibration && !breathes(change)) return null;
  return {
    baseline: { at: baseline.at, points: baseline.points },
    reportAt: "hubs",
    compressionRatio: model.compressionRatio,
    fuel: change.fuel,
    injection: change.injection,
    ...(change.blower ? { blower: blowerQuestion(model, change, change.blower, baseline) } : {}),
    ...(change.calibration && !change.blower ? { calibrationChange: change.calibration } : {}),
    ...(breathes(change) ? { breathingChange: breathingQuestion(model, change.breathing) } : {}),
    fuelSupply: { stages: change.stages },
    // The dyno runs in the gear nearest 1:1; what holds in lower gears is told beside the curve.
    torqueCaps: change.caps
      .filter(({ gears }) => gears === undefined)
      .map(({ name, torqueNm }) => ({ name, torqueNm })),
    hotDay: options.hotDay,
    assumptions: options.assumptions,
  };
}

/** Neither blown nor a turbo-diesel. */
function breathes(change: PowerChange): boolean {
  return change.breathing !== null && !change.blower && !change.calibration && change.fuel !== "diesel";
}

function breathingQuestion(
  { displacementL, engine }: ModelFigures,
  breathing: PowerChange["breathing"],
): NonNullable<ForecastQuestion["breathingChange"]> {
  return { displacementL, volumetricEfficiency: engine.volumetricEfficiency, ...breathing };
}

function blowerQuestion(
  model: ModelFigures,
  { chargeCooler }: PowerChange,
  { drive, ...blower }: NonNullable<PowerChange["blower"]>,
  { points }: PowerBaseline,
): NonNullable<ForecastQuestion["blower"]> {
  const { redlineRpm, volumetricEfficiency } = model.engine;
  return {
    engine: { displacementL: model.displacementL, volumetricEfficiency, maxSpeedRpm: redlineRpm },
    blower,
    drive,
    ambient: referenceAir,
    chargeCooler: chargeCooler && {
      effectiveness: chargeCooler.effectiveness,
      coolantTempC: referenceAir.tempC + chargeCooler.coolantOverAmbientC,
      pressureDropKPa: chargeCooler.pressureDropKPa,
    },
    inletDropKPa: model.air.inletDropKPa,
    speedsRpm: speedsWithin(points.at(0)?.speedRpm ?? 0, points.at(-1)?.speedRpm ?? 0),
  };
}

/** Every hundred within the baseline, and its ends. */
function speedsWithin(first: number, last: number): readonly number[] {
  const speeds = [first];
  for (let speed = Math.ceil((first + 1) / STEP_RPM) * STEP_RPM; speed < last; speed += STEP_RPM) {
    speeds.push(speed);
  }
  return last > first ? [...speeds, last] : speeds;
}
