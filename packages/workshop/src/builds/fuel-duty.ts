import type { Catalogue } from "./catalogue-rows";

/** A blend asks more of the fuel system, and so what a vehicle runs on stands on its sheets from the start. */
export function fuelDuty(catalogue: Catalogue, fuelKind: string, modelCode: string): readonly string[] {
  const duty = catalogue.items.find(({ code }) => code === `runs-on-${fuelKind}`);
  return duty?.fits.includes(modelCode) ? [duty.code] : [];
}
