import { ok, type Result } from "../core/result";
import { refuseBuild } from "./build-refusals";
import type { Catalogue, CataloguePackage } from "./catalogue-rows";
import { notFitting } from "./prerequisite-model";

type ForVehicle = { readonly modelCode: string; readonly modelName: string };

/**
 * The items of a package for a model of vehicle, with what was picked among its choices and options; none
 * without a package. Every choice is answered as it asks to be.
 */
export function packageSelection(
  catalogue: Catalogue,
  packageCode: string | null,
  { modelCode, modelName }: ForVehicle,
  picked: readonly string[] = [],
): Result<readonly string[]> {
  if (packageCode === null) return ok([]);
  const wanted = catalogue.packages.find(({ code }) => code === packageCode);
  if (!wanted) return refuseBuild("package-unknown");
  if (wanted.models.length > 0 && !wanted.models.includes(modelCode))
    return refuseBuild("package-does-not-fit", { package: wanted.name, model: modelName });
  const offered = offeredOf(catalogue, wanted, modelCode);
  const open = offered.choices.find((choice) => !isAnswered(choice, picked));
  if (open) return refuseBuild("package-choice-open", { choice: open.name, pick: open.pick });
  const all = new Set([...offered.choices.flatMap(({ items }) => items), ...offered.options]);
  const stray = picked.find((code) => !all.has(code));
  if (stray !== undefined)
    return refuseBuild("package-choice-unknown", {
      package: wanted.name,
      item: catalogue.items.find(({ code }) => code === stray)?.name ?? stray,
    });
  const fixed = wanted.items.filter((code) => catalogue.items.some((item) => item.code === code));
  return ok([...new Set([...fixed, ...picked])]);
}

/** What a package leaves to the customer on a model of vehicle: items that fit it and are still sold. */
export function offeredOf(
  catalogue: Catalogue,
  { choices, options }: Pick<CataloguePackage, "choices" | "options">,
  modelCode: string,
): Pick<CataloguePackage, "choices" | "options"> {
  const barred = new Set(notFitting(catalogue, modelCode));
  const fitting = (codes: readonly string[]) =>
    codes.filter((code) => !barred.has(code) && catalogue.items.some((item) => item.code === code));
  return {
    choices: choices
      .map((choice) => ({ ...choice, items: fitting(choice.items) }))
      .filter(({ items }) => items.length > 0),
    options: fitting(options),
  };
}

function isAnswered({ pick, items }: CataloguePackage["choices"][number], picked: readonly string[]) {
  const count = items.filter((code) => picked.includes(code)).length;
  if (pick === "exactly-one") return count === 1;
  return pick === "at-least-one" ? count >= 1 : count <= 1;
}
