import { minorUnits } from "@buildproof/units";
import type { Catalogue, CatalogueItem, CatalogueRule } from "../builds/catalogue-rows";
import { asSystemCode } from "../builds/systems";
import type { CatalogueState } from "./catalogue-state";
import type { ContentOf } from "./part-content";

/** The catalogue as the build sheet, the quote and the booking gate work with it. */
export function catalogueOfState({ parts, retired, stock }: CatalogueState): Catalogue {
  const itemOf = (code: string, content: ContentOf<"item">, isRetired: boolean): CatalogueItem => {
    const { position: _, warrantyMonths: __, system, priceMinor, costMinor, ...rest } = content;
    const kept = stock.get(code);
    return {
      ...rest,
      id: kept?.id ?? code,
      code,
      system: asSystemCode(system),
      priceMinor: minorUnits(priceMinor),
      costMinor: minorUnits(costMinor),
      inStock: kept?.inStock ?? 0,
      retired: isRetired,
    };
  };
  return {
    items: [
      ...[...parts.item].map(([code, item]) => itemOf(code, item, false)),
      ...[...retired].map(([code, item]) => itemOf(code, item, true)),
    ],
    access: [...parts.access].map(([code, access]) => ({ code, ...access })),
    operations: [...parts.operation].map(([code, { position: _, skill: __, ...operation }]) => ({
      code,
      ...operation,
    })),
    groups: [...parts.group].map(([code, { position: _, ...group }]) => ({ code, ...group })),
    rules: [...parts.rule].map(([code, rule]) => ruleOf(code, rule)),
    packages: [...parts.package].map(([code, { position: _, promise, ...bundle }]) => ({
      code,
      ...bundle,
      promise: promise && "lowKw" in promise ? promise : null,
      promisedTowKg: promise?.towKg ?? null,
    })),
  };
}

function ruleOf(code: string, { position: _, ...rule }: ContentOf<"rule">): CatalogueRule {
  return { code, ...rule };
}
