import type { BuildSheet } from "../builds/read-build-sheet";
import { accelerationSheet } from "./acceleration-sheet";
import { type ChassisBuild, type ChassisItem, tyresOf } from "./chassis-build";
import { type Chassis, chassisOf } from "./chassis-of";
import { missing, readStored, together, workedOut } from "./part";
import { roadPower } from "./road-power";
import {
  storedDriveline,
  storedItem,
  storedMasses,
  storedModel,
  storedRoad,
  storedTyre,
} from "./stored-chassis";

type Sheet = Pick<
  BuildSheet,
  "vehicle" | "catalogue" | "chosen" | "checked" | "forecast" | "forecastVehicle"
>;

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
          {
            model: driven,
            driveline: ratios,
            masses: limits,
            road: drag,
            tyres,
            items,
            given: sheet.forecastVehicle.given,
            siteAltitudeM: sheet.forecastVehicle.altitudeM,
          },
          curves,
        ),
    ),
  };
}

function buildOf({ vehicle, catalogue, chosen, checked, forecastVehicle }: Sheet): ChassisBuild {
  const { modelFigures: figures, modelName: name } = forecastVehicle;
  const items = chosen.flatMap(({ code, quantity }) => {
    const item = catalogue.items.find((each) => each.code === code);
    return item ? [{ ...item, quantity, chassis: storedItem.safeParse(item.figures) }] : [];
  });
  const unread = items.find(({ chassis }) => !chassis.success);
  return {
    // Every part asks for the model, so a figure that cannot be read is told wherever it might count.
    model: unread
      ? missing(
          `Not worked out: the figures of ${unread.name} in the catalogue cannot be read. Mend them first.`,
        )
      : readStored(storedModel, figures, name),
    driveline: readStored(storedDriveline, groupOf(figures, "driveline"), name),
    tyre: readStored(storedTyre, groupOf(figures, "tyre"), name),
    masses: readStored(storedMasses, groupOf(figures, "masses"), name),
    road: readStored(storedRoad, groupOf(figures, "road"), name),
    items: items.map((item) => ({
      code: item.code,
      name: item.name,
      ...addedBy(item, checked.facts),
    })),
    trailerGtmKg: vehicle.trailerGtmKg,
    alreadyFitted: vehicle.alreadyFitted,
  };
}

/** A part that takes the place of a standard one adds only what it weighs more. */
function addedBy(
  { massKg, quantity, chassis }: Readable,
  facts: Sheet["checked"]["facts"],
): Pick<ChassisItem, "massKg" | "chassis"> {
  const figures = chassis.success ? chassis.data : {};
  const replaced = figures.masses?.replacesFact;
  const leavesKg = replaced === undefined ? 0 : Number(facts[replaced] ?? 0);
  return { massKg: quantity * massKg - leavesKg, chassis: figures };
}

type Readable = {
  readonly massKg: number;
  readonly quantity: number;
  readonly chassis: ReturnType<typeof storedItem.safeParse>;
};

function groupOf(figures: unknown, name: string): unknown {
  if (typeof figures !== "object" || figures === null) return undefined;
  return Object.entries(figures).find(([key]) => key === name)?.[1];
}
