import type { BuildSheet } from "../builds/read-build-sheet";
import { accelerationSheet } from "./acceleration-sheet";
import { type ChassisBuild, tyresOf } from "./chassis-build";
import { type Chassis, chassisOf } from "./chassis-of";
import { readStored, together, workedOut } from "./part";
import { roadPower } from "./road-power";
import {
  storedDriveline,
  storedItem,
  storedMasses,
  storedModel,
  storedRoad,
  storedTyre,
} from "./stored-chassis";

type Sheet = Pick<BuildSheet, "vehicle" | "catalogue" | "chosen" | "forecast" | "forecastVehicle">;

/** What the build of a sheet does to the vehicle under it. */
export function chassisOfSheet(sheet: Sheet): Chassis {
  const build = buildOf(sheet);
  const { model, driveline, masses, road, items } = build;
  const power = roadPower(sheet.forecast, sheet.forecastVehicle);
  return {
    ...chassisOf(build),
    acceleration: workedOut(
      together(model, driveline, masses, road, tyresOf(build), power),
      ([driven, ratios, limits, drag, tyres, curves]) =>
        accelerationSheet(
          { model: driven, driveline: ratios, masses: limits, road: drag, tyres, items },
          curves,
        ),
    ),
  };
}

function buildOf({ vehicle, catalogue, chosen, forecastVehicle }: Sheet): ChassisBuild {
  const { modelFigures: figures, modelName: name } = forecastVehicle;
  return {
    model: readStored(storedModel, figures, name),
    driveline: readStored(storedDriveline, groupOf(figures, "driveline"), name),
    tyre: readStored(storedTyre, groupOf(figures, "tyre"), name),
    masses: readStored(storedMasses, groupOf(figures, "masses"), name),
    road: readStored(storedRoad, groupOf(figures, "road"), name),
    items: chosen.flatMap(({ code, quantity }) => {
      const item = catalogue.items.find((each) => each.code === code);
      if (!item) return [];
      const { massKg, figures: stored } = item;
      return [{ code, name: item.name, massKg: quantity * massKg, chassis: storedItem.parse(stored) }];
    }),
    trailerGtmKg: vehicle.trailerGtmKg,
    alreadyFitted: vehicle.alreadyFitted,
  };
}

function groupOf(figures: unknown, name: string): unknown {
  if (typeof figures !== "object" || figures === null) return undefined;
  return Object.entries(figures).find(([key]) => key === name)?.[1];
}
