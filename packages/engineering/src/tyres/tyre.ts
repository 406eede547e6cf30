import { ImpossibleInputError } from "@buildproof/units";
import { loadIndexKg } from "./load-index";
import { speedSymbolKmh } from "./speed-symbol";
import { type TyreDesignation, tyreDesignation } from "./tyre-designation";

/** What a designation promises. Nulls where it does not say. */
export type Tyre = {
  readonly form: "metric" | "flotation";
  /** P, LT, T or ST in front, C or LT behind. */
  readonly serviceType: string | null;
  readonly construction: string;
  /** Design diameter, from a rim and a section height in whole millimetres. */
  readonly overallDiameterMm: number;
  /** The same without that rounding. */
  readonly exactDiameterMm: number;
  readonly sectionWidthMm: number;
  readonly rimDiameterIn: number;
  readonly aspectPct: number | null;
  readonly loadIndex: number | null;
  readonly dualLoadIndex: number | null;
  /** One tyre, single fitment. */
  readonly loadKg: number | null;
  readonly speedSymbol: string | null;
  readonly speedKmh: number | null;
  readonly revsPerKm: number;
};

/** Rolling circumference over overall diameter of a radial tyre, loaded. ETRTO practice, from memory. */
const ROLLING_FACTOR = 3.05;

/**
 * Reads a tyre's designation. Sizes are nominal: a new tyre may differ by about 3 %, so measure the
 * fitted one where it is close.
 *
 * @source  UN R30 paragraph 6.1.2 and ISO 4000-1: diameter = rim + 2 × section height. Rounding both to
 *          whole millimetres and the factor 3.05 are ETRTO practice, from memory.
 * @vectors shared/reference/tyre.json
 * @param path the field that holds the designation, for a refusal to name.
 * @throws  ImpossibleInputError for a form, size, load index or symbol that is not understood.
 */
export function tyre(designation: string, path = "designation"): Tyre {
  try {
    return read(designation);
  } catch (error) {
    if (error instanceof ImpossibleInputError)
      throw new ImpossibleInputError(error.code, error.message, path);
    throw error;
  }
}

function read(designation: string): Tyre {
  const parts = tyreDesignation(designation);
  const { form, serviceType, construction, loadIndex, dualLoadIndex, speedSymbol } = parts;
  const size = sizeOf(parts);
  return {
    form,
    serviceType,
    construction,
    ...size,
    rimDiameterIn: within(parts.rimTenths / 10, "rim diameter", 8, 30),
    loadIndex,
    dualLoadIndex,
    loadKg: loadIndex === null ? null : known(loadIndexKg(loadIndex), `load index ${loadIndex}`),
    speedSymbol,
    speedKmh: speedSymbol === null ? null : known(speedSymbolKmh(speedSymbol), `speed symbol ${speedSymbol}`),
    revsPerKm: 1e6 / (ROLLING_FACTOR * size.overallDiameterMm),
  };
}

/** Rolling circumference in metres. */
export function rollingCircumferenceM(of: Tyre): number {
  return 1000 / of.revsPerKm;
}

function sizeOf(
  parts: TyreDesignation,
): Pick<Tyre, "overallDiameterMm" | "exactDiameterMm" | "sectionWidthMm" | "aspectPct"> {
  if (parts.form === "flotation") {
    within(parts.diameterHundredthsIn / 100, "overall diameter", 20, 60);
    within(parts.widthHundredthsIn / 100, "section width", 5, 20);
    const overall = (parts.diameterHundredthsIn * 254) / 1000;
    const sectionWidthMm = (parts.widthHundredthsIn * 254) / 1000;
    return { overallDiameterMm: overall, exactDiameterMm: overall, sectionWidthMm, aspectPct: null };
  }
  const { widthMm, aspectPct, rimTenths } = parts;
  within(widthMm, "section width", 105, 455);
  within(aspectPct, "aspect ratio", 20, 100);
  // 25.4 × code and width × aspect ÷ 100, both in hundredths of a millimetre: whole numbers.
  const rim = rimTenths * 254;
  const height = widthMm * aspectPct;
  return {
    overallDiameterMm: wholeMm(rim) + 2 * wholeMm(height),
    exactDiameterMm: (rim + 2 * height) / 100,
    sectionWidthMm: widthMm,
    aspectPct,
  };
}

/** Half up, in whole numbers. */
function wholeMm(hundredths: number): number {
  return Math.floor((hundredths + 50) / 100);
}

function within(value: number, what: string, least: number, most: number): number {
  if (value >= least && value <= most) return value;
  throw new ImpossibleInputError(
    "out-of-range",
    `The ${what} must be between ${least} and ${most}, not ${value}: read the sidewall again.`,
  );
}

function known(value: number | null, what: string): number {
  if (value !== null) return value;
  throw new ImpossibleInputError(
    "unknown-service-description",
    `There is no ${what}: read the sidewall again.`,
  );
}
