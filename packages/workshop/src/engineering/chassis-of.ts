import type { AccelerationSheet } from "./acceleration-sheet";
import { trailerOf } from "./ball-load";
import { type ChassisBuild, tyresOf } from "./chassis-build";
import type { ChassisFinding } from "./finding";
import { type GearingSheet, gearingSheet } from "./gearing-sheet";
import { massFindings } from "./mass-findings";
import { type MassSheet, massSheet, upgradedLimits } from "./mass-sheet";
import { type Part, together, workedOut } from "./part";
import { type SpeedometerSheet, speedometerSheet } from "./speedometer-sheet";
import { type TowingSheet, towingSheet } from "./towing-sheet";
import { type TyreSheet, tyreSheet } from "./tyre-sheet";

/** What a build does to tyres, gearing, speedometer, masses and times on the road; each part works out or says what it lacks. */
export type Chassis = {
  readonly tyres: Part<TyreSheet>;
  readonly gearing: Part<GearingSheet>;
  readonly speedometer: Part<SpeedometerSheet>;
  readonly masses: Part<MassSheet & { readonly findings: readonly ChassisFinding[] }>;
  readonly towing: Part<TowingSheet>;
  readonly acceleration: Part<AccelerationSheet>;
  /** What of the vehicle is not in the catalogue's figures; empty where nothing is. */
  readonly alreadyFitted: string;
};

/** All of it but the acceleration, which needs the engine too. */
export function chassisOf(build: ChassisBuild): Omit<Chassis, "acceleration"> {
  const { items, driveline, masses, road, tyre, alreadyFitted } = build;
  const tyres = tyresOf(build);
  const trailer = trailerOf(build);
  const weighed = workedOut(together(masses, tyres), ([limits, { fitted }]) =>
    massSheet(limits, items, fitted, trailer),
  );
  return {
    tyres: workedOut(together(tyres, masses, road), ([chosen, limits, { topSpeedKmh }]) =>
      tyreSheet(chosen, items, { ...upgradedLimits(limits, items), topSpeedKmh }),
    ),
    gearing: workedOut(together(driveline, tyres), ([ratios, chosen]) => gearingSheet(ratios, items, chosen)),
    speedometer: workedOut(together(tyre, driveline, tyres), ([shown, ratios, chosen]) =>
      speedometerSheet(shown, ratios, items, chosen),
    ),
    masses: workedOut(weighed, (sheet) => ({ ...sheet, findings: massFindings(sheet) })),
    towing: workedOut(together(masses, weighed), ([limits, sheet]) =>
      towingSheet(limits, items, sheet, trailer),
    ),
    alreadyFitted,
  };
}
