import { catalogue } from "../../../../prisma/demo/catalogue/catalogue";
import type { ModelId } from "../../../../prisma/demo/catalogue/types";
import type { BuildForecast, Forecasted } from "../engineering/build-forecast";
import { type ForecastVehicle, forecastOfItems } from "../engineering/forecast-of-items";

const items = catalogue.items.map(({ id, name, figures }) => ({ code: id, name, figures }));

/** The figures of a demo model, as the database holds them. */
export function demoModelFigures(model: ModelId): Readonly<Record<string, unknown>> {
  const found = catalogue.models.find(({ id }) => id === model);
  if (!found) throw new Error(`the demo has no model ${model}`);
  const { engine: _, figures, ...shown } = found;
  return { ...shown, ...figures };
}

/** The forecast of a demo model with some items, on its rating unless said otherwise. */
export function demoForecast(
  model: ModelId,
  codes: readonly string[],
  different: Partial<ForecastVehicle> = {},
): BuildForecast {
  const isDiesel = model === "vale-30td";
  const vehicle: ForecastVehicle = {
    fuelKind: isDiesel ? "diesel" : "petrol",
    fuelOctane: isDiesel ? null : 98,
    modelName: model,
    modelFigures: demoModelFigures(model),
    measured: null,
    designAmbientC: 43,
    altitudeM: 0,
    given: {},
    ...different,
  };
  return forecastOfItems(vehicle, items, new Set(codes));
}

/** The same where there must be one. */
export function forecasted(...asked: Parameters<typeof demoForecast>): Forecasted {
  const forecast = demoForecast(...asked);
  if (forecast.kind !== "forecast") throw new Error(forecast.sentence);
  return forecast;
}
