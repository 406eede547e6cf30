import { ImpossibleInputError } from "@buildproof/units";
import { atHubs } from "./as-it-stands";
import type { BuildForecast } from "./build-forecast";
import type { CurvePoint } from "./forecast-curve";
import type { ForecastVehicle } from "./forecast-of-items";
import { missing, type Part, present } from "./part";
import { type PowerPoint, powerBaseline } from "./power-baseline";
import { modelFigures } from "./stored-figures";

/** What drives the vehicle before and after, at the hubs. */
export type RoadPower = {
  readonly before: readonly PowerPoint[];
  /** Null where no chosen item changes the engine. */
  readonly after: {
    readonly low: readonly PowerPoint[];
    readonly expected: readonly PowerPoint[];
    readonly high: readonly PowerPoint[];
  } | null;
  /** On what the curves rest, in sentences. */
  readonly sentences: readonly string[];
};

/** The curves that a run on the road takes from the forecast; without one, what the vehicle makes as it stands. */
export function roadPower(forecast: BuildForecast, vehicle: ForecastVehicle): Part<RoadPower> {
  switch (forecast.kind) {
    case "missing":
      return missing(`Not worked out. ${forecast.sentence}`);
    case "unchanged":
      return asItDrives(vehicle);
    case "forecast": {
      const { points, reference, baseline, gears } = forecast;
      const curve = (of: (point: CurvePoint) => number) =>
        points.map((point) => ({ speedRpm: point.speedRpm, powerKw: of(point) }));
      return present({
        before: curve(({ baselineKw }) => baselineKw),
        after: {
          low: curve(({ powerKw }) => powerKw.low),
          expected: curve(({ powerKw }) => powerKw.expected),
          high: curve(({ powerKw }) => powerKw.high),
        },
        sentences: [
          `Power at the hubs as forecast, low to high: ${reference}. ${baseline.sentence}`,
          ...gears.map((held) => `${held} The times do not count that.`),
        ],
      });
    }
  }
}

function asItDrives({ modelFigures: stored, measured }: ForecastVehicle): Part<RoadPower> {
  const model = modelFigures.safeParse(stored);
  if (!model.success) return missing("Not worked out: the catalogue does not have the power of this model.");
  const baseline = powerBaseline(model.data, measured);
  const assume = model.data.engine.assume ?? {};
  try {
    return present({
      before: baseline.points.map((point) => ({
        speedRpm: point.speedRpm,
        powerKw: atHubs(baseline, assume, point).expected,
      })),
      after: null,
      sentences: [`The engine stays as it is. ${baseline.sentence}`],
    });
  } catch (error) {
    if (error instanceof ImpossibleInputError) return missing(`Not worked out. ${error.message}`);
    throw error;
  }
}
