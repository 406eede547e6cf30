import { ok, type Result } from "../core/result";
import { refuseBuild } from "./build-refusals";
import type { Catalogue } from "./catalogue-rows";

/** The items of a package for a model of vehicle; none without a package. */
export function packageSelection(
  catalogue: Catalogue,
  packageCode: string | null,
  { modelCode, modelName }: { readonly modelCode: string; readonly modelName: string },
): Result<readonly string[]> {
  if (packageCode === null) return ok([]);
  const wanted = catalogue.packages.find(({ code }) => code === packageCode);
  if (!wanted) return refuseBuild("package-unknown");
  if (wanted.models.length > 0 && !wanted.models.includes(modelCode))
    return refuseBuild("package-does-not-fit", { package: wanted.name, model: modelName });
  return ok(wanted.items.filter((code) => catalogue.items.some((item) => item.code === code)));
}
