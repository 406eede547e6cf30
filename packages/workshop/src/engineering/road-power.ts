import { ImpossibleInputError } from "@buildproof/units";
import { atHubs } from "./as-it-stands";
import { type BuildForecast, type Forecasted, gearCapsOf } from "./build-forecast";
import type { ForecastVehicle } from "./forecast-of-items";
import { missing, type Part, present } from "./part";
import { powerBaseline } from "./power-baseline";
import { type HubsLoss, type RoadCurve, roadCurve } from "./road-curve";
import { type ModelFigures, modelFigures } from "./stored-figures";

/** What drives the vehicle before and after, at the hubs. */
export type RoadPower = {
  readonly isDiesel: boolean;
  readonly before: RoadCurve;
  /** Null where no chosen item changes the engine. */
  readonly after: { readonly low: RoadCurve; readonly expected: RoadCurve; readonly high: RoadCurve } | null;
  /** On what the curves rest, in sentences. */
  readonly sentences: readonly string[];
};

/** The curves that a run on the road takes from the forecast; without one, what the vehicle makes as it stands. */
export function roadPower(forecast: BuildForecast, vehicle: ForecastVehicle): Part<RoadPower> {
  if (forecast.kind === "missing") return missing(`Not worked out. ${forecast.sentence}`);
  const model = modelFigures.safeParse(vehicle.modelFigures);
  if (!model.success) return missing("Not worked out: the catalogue does not have the power of this model.");
  return forecast.kind === "forecast"
    ? present(asForecast(forecast, model.data))
    : asItDrives(model.data, vehicle);
}

function asForecast(forecast: Forecasted, model: ModelFigures): RoadPower {
  const { points, reference, baseline, gears, gearCaps } = forecast;
  const loss = lossOf(forecast);
  const curve = (of: (point: (typeof points)[number]) => number, caps: typeof gearCaps) =>
    roadCurve(
      points.map((point) => ({ speedRpm: point.speedRpm, powerKw: of(point) })),
      caps,
      loss,
    );
  return {
    isDiesel: model.fuelKind === "diesel",
    before: curve(({ baselineKw }) => baselineKw, gearCapsOf(model.caps)),
    after: {
      low: curve(({ powerKw }) => powerKw.low, gearCaps),
      expected: curve(({ powerKw }) => powerKw.expected, gearCaps),
      high: curve(({ powerKw }) => powerKw.high, gearCaps),
    },
    sentences: [
      `Power at the hubs as forecast, low to high: ${reference}. ${baseline.sentence}`,
      ...gears.map((held) => `${held} The times count that.`),
    ],
  };
}

function lossOf({ assumptions }: Forecasted): HubsLoss {
  const used = (name: keyof HubsLoss) => {
    const found = assumptions.find((each) => each.name === name);
    if (!found) throw new RangeError(`A forecast assumes ${name}.`);
    return found.used;
  };
  return { meshEfficiency: used("meshEfficiency"), dragKwAt6000: used("dragKwAt6000") };
}

function asItDrives(model: ModelFigures, { measured }: ForecastVehicle): Part<RoadPower> {
  const baseline = powerBaseline(model, measured);
  const assume = model.engine.assume ?? {};
  try {
    const points = baseline.points.map((point) => ({
      speedRpm: point.speedRpm,
      powerKw: atHubs(baseline, assume, point).expected,
    }));
    return present({
      isDiesel: model.fuelKind === "diesel",
      before: roadCurve(points, gearCapsOf(model.caps), assume),
      after: null,
      sentences: [`The engine stays as it is. ${baseline.sentence}`],
    });
  } catch (error) {
    if (error instanceof ImpossibleInputError) return missing(`Not worked out. ${error.message}`);
    throw error;
  }
}
