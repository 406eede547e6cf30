import { type AccelerationQuestion, standardAtmosphere } from "@buildproof/engineering";
import { type ChassisItem, finalDrivesOf, type Tyres } from "./chassis-build";
import { PERSON_KG } from "./mass-sheet";
import type { Driveline, Masses, Road } from "./stored-chassis";

export type RoadBuild = {
  readonly model: { readonly driven: AccelerationQuestion["drivenAxles"] };
  readonly driveline: Driveline;
  readonly masses: Masses;
  readonly road: Road;
  readonly tyres: Tyres;
  readonly items: readonly ChassisItem[];
};

/** From the hubs to the road: slip of the tyres. Common practice, no source. */
const HUBS_TO_ROAD = 0.98;
const REFERENCE_C = 25;
const SEA_LEVEL_M = 0;

/** The vehicle as standard, or with what is chosen, its driver alone in it, on a level road in still air. */
export function roadQuestion(
  build: RoadBuild,
  as: "standard" | "built",
): Omit<AccelerationQuestion, "curve" | "targetsKmh" | "distancesM"> {
  const { driveline, masses, road, tyres, model } = build;
  const isBuilt = as === "built";
  const carried = isBuilt ? build.items.filter(({ chassis }) => !chassis.masses?.trailerKg) : [];
  const driverFront = PERSON_KG * (masses.seatRows[0]?.frontAxleShare ?? 0.5);
  const addedKg = carried.reduce((sum, { massKg }) => sum + massKg, 0);
  const addedFrontKg = carried.reduce(
    (sum, { massKg, chassis }) => sum + massKg * (chassis.masses?.frontAxleShare ?? 0.5),
    0,
  );
  const massKg = masses.kerbFrontKg + masses.kerbRearKg + PERSON_KG + addedKg;
  const drives = finalDrivesOf(driveline, build.items);
  return {
    massKg,
    rotatingFactor: road.rotatingFactor,
    tyre: isBuilt ? tyres.fitted : tyres.standard,
    gears: driveline.gearRatios,
    finalDrive: isBuilt ? drives.fitted : drives.standard,
    shiftTimeS: driveline.shiftTimeS,
    drivelineEfficiency: HUBS_TO_ROAD,
    rollingCoefficient: road.rollingCoefficient,
    dragAreaM2: road.dragCoefficient * road.frontalAreaM2,
    airDensityKgPerM3: standardAtmosphere(SEA_LEVEL_M, REFERENCE_C).densityKgPerM3,
    slopePct: 0,
    drivenAxles: model.driven,
    gripCoefficient: road.gripCoefficient,
    frontLoadPct: (100 * (masses.kerbFrontKg + driverFront + addedFrontKg)) / massKg,
    gravityHeightToWheelbase: masses.gravityHeightMm / masses.wheelbaseMm,
  };
}
