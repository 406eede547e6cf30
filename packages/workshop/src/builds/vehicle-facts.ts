import type { Facts } from "@buildproof/prerequisites";

/** What of one vehicle the rules ask about. */
export type VehicleForRules = {
  readonly odometerKm: number;
  readonly fuelKind: "petrol" | "e10" | "e85" | "diesel";
  /** Research octane number; null for diesel. */
  readonly fuelOctane: number | null;
  /** Loaded mass on the wheels of the heaviest trailer; null where it tows none. */
  readonly trailerGtmKg: number | null;
  readonly modelFacts: Readonly<Record<string, number>>;
};

/**
 * The facts of a model together with those of this very vehicle, its place, its inspection and its forecast: the
 * torque at the crank is what the chosen items would make if no controller held it, 0 where none changes it.
 */
export function factsOf(
  vehicle: VehicleForRules,
  place: { readonly designAmbientC: number },
  build: { readonly inspectionStands: boolean; readonly crankTorqueNm: number },
): Facts {
  return {
    ...vehicle.modelFacts,
    odometerKm: vehicle.odometerKm,
    fuelOctaneRon: vehicle.fuelKind === "diesel" ? 0 : (vehicle.fuelOctane ?? 0),
    // Whoever runs on E85 can buy it.
    e85SoldNearby: vehicle.fuelKind === "e85" ? 1 : 0,
    trailerGtmKg: vehicle.trailerGtmKg ?? 0,
    designAmbientC: place.designAmbientC,
    inspectionPassed: build.inspectionStands ? 1 : 0,
    crankTorqueNm: build.crankTorqueNm,
  };
}
