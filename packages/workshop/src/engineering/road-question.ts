import { type AccelerationQuestion, standardAtmosphere } from "@buildproof/engineering";
import { type ChassisItem, finalDrivesOf, type Tyres } from "./chassis-build";
import { PERSON_KG } from "./mass-sheet";
import type { Driveline, Masses, Road } from "./stored-chassis";
import type { GivenFigures } from "./used-assumptions";
import { roadConditions } from "./used-road";

export type RoadBuild = {
  readonly model: { readonly driven: AccelerationQuestion["drivenAxles"] };
  readonly driveline: Driveline;
  readonly masses: Masses;
  readonly road: Road;
  readonly tyres: Tyres;
  readonly items: readonly ChassisItem[];
  /** What was changed, and where the site lies. */
  readonly given: GivenFigures;
  readonly siteAltitudeM: number;
};

/** From the hubs to the road: slip of the tyres. Common practice, no source. */
const HUBS_TO_ROAD = 0.98;
const REFERENCE_C = 25;

/** The vehicle as standard, or with what is chosen, its driver alone in it, on the road as it is assumed. */
export function roadQuestion(
  build: RoadBuild,
  as: "standard" | "built",
): Omit<AccelerationQuestion, "curve" | "gearCurves" | "targetsKmh" | "distancesM"> {
  const { driveline, masses, road, tyres, model } = build;
  const isBuilt = as === "built";
  const { roadSlopePct, roadHeadwindKmh, roadAltitudeM } = roadConditions(build.given, build.siteAltitudeM);
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
    airDensityKgPerM3: standardAtmosphere(roadAltitudeM, REFERENCE_C).densityKgPerM3,
    slopePct: roadSlopePct,
    headwindKmh: roadHeadwindKmh,
    drivenAxles: model.driven,
    gripCoefficient: road.gripCoefficient,
    frontLoadPct: (100 * (masses.kerbFrontKg + driverFront + addedFrontKg)) / massKg,
    gravityHeightToWheelbase: masses.gravityHeightMm / masses.wheelbaseMm,
  };
}
