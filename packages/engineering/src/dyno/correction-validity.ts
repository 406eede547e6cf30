import type {
  CorrectionQuestion,
  CorrectionStandard,
  CorrectionWarning,
  Ignition,
} from "./correction-question";
import type { IntakeAir } from "./intake-air";

export type Band = readonly [least: number, most: number];
export type CorrectionLimits = { readonly tempC?: Band; readonly dryKPa?: Band; readonly factor?: Band };

/**
 * Conditions under which a code allows its name beside a corrected figure, ends included.
 *
 * @source SAE J1349 (15 to 35 °C, 90 to 105 kPa dry; ±7 % from memory); UN R85 spark ±7 % from memory;
 *         compression 0.9 to 1.1, 283 to 313 K, 80 to 110 kPa, as printed in engine makers' manuals.
 */
const LIMITS: Readonly<Record<CorrectionStandard, Readonly<Record<Ignition, CorrectionLimits>>>> = {
  SAE_J1349: {
    spark: { tempC: [15, 35], dryKPa: [90, 105], factor: [0.93, 1.07] },
    compression: { tempC: [15, 35], dryKPa: [90, 105], factor: [0.93, 1.07] },
  },
  UN_R85: {
    spark: { factor: [0.93, 1.07] },
    compression: { tempC: [10, 40], dryKPa: [80, 110], factor: [0.9, 1.1] },
  },
  DIN_70020: { spark: {}, compression: {} },
  SAE_J607: { spark: {}, compression: {} },
};

/** What a code allows, ends included; nothing where it sets no limit. */
export function correctionLimits(standard: CorrectionStandard, ignition: Ignition): CorrectionLimits {
  return LIMITS[standard][ignition];
}

/** Barometers outside this are more likely in another unit, or reduced to sea level: common practice. */
const PLAUSIBLE_BAROMETER_KPA: Band = [60, 110];

export function correctionWarnings(
  question: CorrectionQuestion,
  air: IntakeAir,
  factor: number,
): readonly CorrectionWarning[] {
  const { standard, ignition } = question;
  const limits = LIMITS[standard][ignition];
  const given: readonly (readonly [CorrectionWarning, boolean])[] = [
    ["superseded", standard === "DIN_70020" || standard === "SAE_J607"],
    ["not-for-compression-ignition", ignition === "compression" && standard !== "UN_R85"],
    ["temperature-out-of-range", isOutside(question.airTempC, limits.tempC)],
    ["dry-pressure-out-of-range", isOutside(air.dry, limits.dryKPa)],
    ["factor-out-of-range", isOutside(factor, limits.factor)],
    ["boost-control-may-overcorrect", ignition === "spark" && question.aspiration !== "natural"],
    ["barometer-implausible", isOutside(air.total, PLAUSIBLE_BAROMETER_KPA)],
    ["supercooled-vapour", question.airTempC < 0 && question.relativeHumidityPct !== undefined],
    ["fuel-figures-not-used", hasUnusedFuelFigures(question)],
  ];
  return given.filter(([, applies]) => applies).map(([warning]) => warning);
}

const INVALIDATING: ReadonlySet<CorrectionWarning> = new Set<CorrectionWarning>([
  "not-for-compression-ignition",
  "temperature-out-of-range",
  "dry-pressure-out-of-range",
  "factor-out-of-range",
]);

export function isValidCorrection(warnings: readonly CorrectionWarning[]): boolean {
  return !warnings.some((warning) => INVALIDATING.has(warning));
}

function isOutside(value: number, band: Band | undefined): boolean {
  return band !== undefined && (value < band[0] || value > band[1]);
}

function hasUnusedFuelFigures({
  ignition,
  standard,
  fuelMgPerLPerCycle,
  boostRatio,
}: CorrectionQuestion): boolean {
  const given = fuelMgPerLPerCycle !== undefined || boostRatio !== undefined;
  return given && (ignition === "spark" || standard !== "UN_R85");
}
