import type { CatalogueRule } from "./catalogue-rows";
import { namedFacts } from "./finding-words";

export type Remedy = { readonly place: "vehicle" | "inspection"; readonly sentence: string };

/** Where a rule is put right when no item does it. */
export function remedyOf(rule: CatalogueRule | undefined): Remedy | null {
  if (rule?.kind !== "needs") return null;
  const facts = namedFacts(rule.then);
  if (facts.includes("fuelOctaneRon"))
    return {
      place: "vehicle",
      sentence: "Record the fuel that the owner really buys on the vehicle's page.",
    };
  if (facts.includes("inspectionPassed"))
    return { place: "inspection", sentence: "Or record the inspection below, once it is done." };
  return null;
}
