import { addDays } from "../core/site-date";

/** Limits of the pre-build inspection. Common practice, no source. */
export const inspectionLimits = {
  leakDownWorstPct: 12,
  leakDownSpreadPct: 6,
  fuelTrimPct: 8,
  validDays: 60,
  validKm: 3_000,
} as const;

export type InspectionReadings = {
  readonly leakDownWorstPct: number;
  readonly leakDownSpreadPct: number;
  /** The trim farthest from zero, with its sign. */
  readonly fuelTrimWorstPct: number;
  readonly misfireCodes: boolean;
  readonly coolingSound: boolean;
};

/** Why the readings do not pass, in words; empty when they do. Limits are inclusive. */
export function inspectionReasons(readings: InspectionReadings): readonly string[] {
  const limits = inspectionLimits;
  const reasons: string[] = [];
  if (readings.leakDownWorstPct > limits.leakDownWorstPct)
    reasons.push(
      `Leak-down ${readings.leakDownWorstPct} % on the worst cylinder, above ${limits.leakDownWorstPct} %.`,
    );
  if (readings.leakDownSpreadPct > limits.leakDownSpreadPct)
    reasons.push(`Leak-down spread ${readings.leakDownSpreadPct} points, above ${limits.leakDownSpreadPct}.`);
  if (Math.abs(readings.fuelTrimWorstPct) > limits.fuelTrimPct)
    reasons.push(`Fuel trim ${readings.fuelTrimWorstPct} %, outside ±${limits.fuelTrimPct} %.`);
  if (readings.misfireCodes) reasons.push("A misfire code is stored.");
  if (!readings.coolingSound) reasons.push("The cooling system is not sound.");
  return reasons;
}

/** The last day and the last kilometre that an inspection stands. */
export function inspectionValidity(doneOn: string, odometerKm: number) {
  return {
    validUntil: addDays(doneOn, inspectionLimits.validDays),
    validToOdometerKm: odometerKm + inspectionLimits.validKm,
  };
}

/** Whether an inspection still speaks for the vehicle as it is now. */
export function inspectionStands(
  inspection: {
    readonly outcome: "passed" | "failed";
    readonly validUntil: string;
    readonly validToOdometerKm: number;
  },
  now: { readonly today: string; readonly odometerKm: number },
): boolean {
  return (
    inspection.outcome === "passed" &&
    now.today <= inspection.validUntil &&
    now.odometerKm <= inspection.validToOdometerKm
  );
}
