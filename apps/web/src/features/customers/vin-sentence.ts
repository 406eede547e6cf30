import type { lookUpVin, ValueOf } from "@buildproof/workshop";

type VinSays = ValueOf<typeof lookUpVin>;

/** "Check digit 4 as expected. Model year 1996 or 2026. Made in Australia." */
export function vinSentence({
  checkDigit,
  modelYears,
  country,
  region,
}: Pick<VinSays, "checkDigit" | "modelYears" | "country" | "region">): string {
  const place = country ?? region;
  return [
    checkDigit?.matches ? `Check digit ${checkDigit.found}, as expected.` : "",
    modelYears.length > 0 ? `Model year ${modelYears.join(" or ")}, where the maker uses the code.` : "",
    place ? `Maker’s region: ${place}.` : "",
  ]
    .filter((part) => part !== "")
    .join(" ");
}
