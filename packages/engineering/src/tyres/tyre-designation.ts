import { ImpossibleInputError } from "@buildproof/units";

/** The parts a sidewall spells out, as whole numbers of the smallest step written, so that sizes are exact. */
export type TyreDesignation = {
  readonly serviceType: string | null;
  readonly construction: string;
  /** Tenths of the rim diameter code: 165 for a 16.5 rim. */
  readonly rimTenths: number;
  readonly loadIndex: number | null;
  readonly dualLoadIndex: number | null;
  readonly speedSymbol: string | null;
} & (
  | { readonly form: "metric"; readonly widthMm: number; readonly aspectPct: number }
  | { readonly form: "flotation"; readonly diameterHundredthsIn: number; readonly widthHundredthsIn: number }
);

const SERVICE = String.raw`(?:\s*XL)?(?:\s*\(?(?<load>\d{1,3})(?:\/(?<dual>\d{1,3}))?\s*(?<symbol>A[1-8]|[B-Y])(?<bracket>\))?(?:\s*XL)?)?`;
const RIM = String.raw`\s*(?<construction>ZR|R|D|B|-)\s*(?<rim>\d{1,2}(?:\.5)?)`;
const METRIC = new RegExp(
  String.raw`^(?<prefix>P|LT|T|ST)?\s*(?<width>\d{3})\s*\/\s*(?<aspect>\d{2,3})${RIM}\s*(?<suffix>C|LT)?${SERVICE}$`,
);
const FLOTATION = new RegExp(
  String.raw`^(?<diameter>\d{2}(?:\.\d{1,2})?)\s*X\s*(?<width>\d{1,2}(?:\.\d{1,2})?)${RIM}\s*(?<suffix>LT)?${SERVICE}$`,
);

const EXAMPLES = {
  metric: "285/65R18 116T",
  "light-truck metric": "LT285/70R17 121/118S",
  flotation: "33x12.50R18LT 118Q",
} as const;

/**
 * Takes a sidewall designation apart: metric, light-truck metric or flotation, with or without a
 * service description (load index, for dual fitment a second one, and speed symbol).
 *
 * @throws ImpossibleInputError naming the nearest understood form.
 */
export function tyreDesignation(designation: string): TyreDesignation {
  const text = designation.trim().toUpperCase().replace("×", "X").replaceAll(/[‐‑–]/g, "-");
  const metric = METRIC.exec(text)?.groups;
  const flotation = FLOTATION.exec(text)?.groups;
  const found = metric ?? flotation;
  if (!found) {
    throw new ImpossibleInputError(
      "unknown-designation",
      `"${designation}" is not a tyre designation that is understood; the nearest form is ${nearestForm(text)}.`,
    );
  }
  const shared = {
    serviceType: found.prefix ?? found.suffix ?? null,
    construction: found.construction ?? "R",
    rimTenths: Math.round(Number(found.rim) * 10),
    loadIndex: found.load === undefined ? null : Number(found.load),
    dualLoadIndex: found.dual === undefined ? null : Number(found.dual),
    // Written in brackets, (94Y) means more than the letter alone.
    speedSymbol: found.bracket && found.symbol === "Y" ? "(Y)" : (found.symbol ?? null),
  };
  return metric
    ? { ...shared, form: "metric", widthMm: Number(found.width), aspectPct: Number(found.aspect) }
    : {
        ...shared,
        form: "flotation",
        diameterHundredthsIn: Math.round(Number(found.diameter) * 100),
        widthHundredthsIn: Math.round(Number(found.width) * 100),
      };
}

function nearestForm(text: string): string {
  const form = /X/.test(text) ? "flotation" : text.startsWith("LT") ? "light-truck metric" : "metric";
  return `${form}, as in ${EXAMPLES[form]}`;
}
