import { type BuildForecast, buildAsksOfGearbox, buildForecast, missing } from "./build-forecast";
import type { MeasuredBaseline } from "./power-baseline";
import type { FuelBought } from "./power-change";
import { itemFigures, modelFigures } from "./stored-figures";
import type { GivenFigures } from "./used-assumptions";

/** Of a vehicle and its place, what a forecast needs beside the items. */
export type ForecastVehicle = FuelBought & {
  readonly modelName: string;
  /** As they lie in the database. */
  readonly modelFigures: unknown;
  readonly measured: MeasuredBaseline | null;
  readonly designAmbientC: number;
  /** Of the site. */
  readonly altitudeM: number;
  readonly given: GivenFigures;
};

type StoredItem = { readonly code: string; readonly name: string; readonly figures: unknown };

/** The forecast for a vehicle with some items of the catalogue. */
export function forecastOfItems(
  vehicle: ForecastVehicle,
  items: readonly StoredItem[],
  codes: ReadonlySet<string>,
): BuildForecast {
  const read = readBuild(
    vehicle,
    items.filter(({ code }) => codes.has(code)),
  );
  return "sentence" in read ? read : buildForecast(read);
}

function readBuild(vehicle: ForecastVehicle, items: readonly StoredItem[]) {
  const model = modelFigures.safeParse(vehicle.modelFigures);
  if (!model.success) {
    const at = String(model.error.issues[0]?.path[0] ?? "engine");
    return missing(`the catalogue lacks ${whatIs(at)} of the ${vehicle.modelName}; the owner can add it`);
  }
  const chosen = [];
  for (const { code, name, figures } of items) {
    const parsed = itemFigures.safeParse(figures);
    if (!parsed.success)
      return missing(`the figures of ${name} in the catalogue cannot be read; the owner can mend them`);
    chosen.push({ code, name, figures: parsed.data });
  }
  const { fuelKind, fuelOctane, measured, designAmbientC, altitudeM, given } = vehicle;
  const bought = { fuelKind, fuelOctane };
  return { model: model.data, chosen, bought, measured, designAmbientC, altitudeM, given };
}

/** The torque that the rules judge: what gearbox and clutch would have to bear if no controller held it; else 0. */
export function askedTorqueNm(forecast: BuildForecast): number {
  return forecast.kind === "forecast" ? Math.round(forecast.askedOfGearbox.torqueNm) : 0;
}

/** The same for items that are only thought of, without the rest of their forecast. */
export function askedTorqueWith(vehicle: ForecastVehicle, items: readonly StoredItem[]): number {
  const read = readBuild(vehicle, items);
  return "sentence" in read ? 0 : Math.round(buildAsksOfGearbox(read)?.torqueNm ?? 0);
}

const words: Readonly<Record<string, string>> = {
  displacementL: "the displacement",
  compressionRatio: "the compression ratio",
  injection: "the kind of injection",
  fuelKind: "the fuel",
  engine: "the rated curve and the filling",
  air: "the pressure drop of the intake",
  fuel: "the stages of the fuel system",
  caps: "the torque limits",
};

function whatIs(key: string): string {
  return words[key] ?? "the figures";
}
