import { changesPower } from "../engineering/changes-power";
import type { Catalogue, CataloguePackage } from "./catalogue-rows";
import { rivalsOf } from "./exclusion";
import { itemByCode } from "./ledger";
import { offeredOf } from "./package-selection";
import { notFitting } from "./prerequisite-model";

/** Where a way to a goal starts from: a package, a variation of it, a part that changes power, or a past build. */
export type GoalStart = {
  readonly kind: "package" | "variation" | "part" | "past";
  readonly name: string;
  readonly packageCode: string | null;
  readonly picked: readonly string[];
  readonly items: readonly string[];
};

/** A package with many choices is tried in these many ways; the rest are on its own form. */
const MOST_PICKS = 6;

/** Where one can start from on a model of vehicle, beside its past builds. */
export function goalStarts(catalogue: Catalogue, modelCode: string): readonly GoalStart[] {
  const barred = new Set(notFitting(catalogue, modelCode));
  const fits = (code: string) => !barred.has(code) && catalogue.items.some((item) => item.code === code);
  const packages = catalogue.packages
    .filter(({ models }) => models.length === 0 || models.includes(modelCode))
    .flatMap((bundle) => packageStarts(catalogue, bundle, modelCode));
  const variations = packages.flatMap((start) => variationsOf(catalogue, start, fits));
  const parts = catalogue.items
    .filter((item) => item.kind !== "duty" && changesPower(item) && fits(item.code))
    .map(
      ({ code, name }): GoalStart => ({ kind: "part", name, packageCode: null, picked: [], items: [code] }),
    );
  return [...packages, ...variations, ...parts];
}

function packageStarts(
  catalogue: Catalogue,
  bundle: CataloguePackage,
  modelCode: string,
): readonly GoalStart[] {
  const known = new Set(catalogue.items.map(({ code }) => code));
  const items = bundle.items.filter((code) => known.has(code));
  const { choices } = offeredOf(catalogue, bundle, modelCode);
  const mustPick = choices.filter(({ pick }) => pick !== "at-most-one");
  const picks = mustPick.reduce<readonly (readonly string[])[]>(
    (ways, choice) => ways.flatMap((way) => choice.items.map((code) => [...way, code])).slice(0, MOST_PICKS),
    [[]],
  );
  return picks.map((picked) => ({
    kind: "package",
    name: [bundle.name, ...picked.map((code) => itemByCode(catalogue, code).name)].join(", "),
    packageCode: bundle.code,
    picked,
    items: [...new Set([...items, ...picked])],
  }));
}

/** The package with another part in the place of the one that makes its power: blower, pulley or fuel. */
function variationsOf(
  catalogue: Catalogue,
  start: GoalStart,
  fits: (code: string) => boolean,
): readonly GoalStart[] {
  const powerful = start.items.filter((code) => changesPower(itemByCode(catalogue, code)));
  return powerful.flatMap((code) =>
    rivalsOf(catalogue, code)
      .filter((rival) => fits(rival) && changesPower(itemByCode(catalogue, rival)))
      .map((rival) => ({
        kind: "variation" as const,
        name: `${start.name} with ${itemByCode(catalogue, rival).name}`,
        packageCode: null,
        picked: [],
        items: start.items.map((each) => (each === code ? rival : each)),
      })),
  );
}
