import type { Catalogue } from "../../builds/catalogue-rows";
import { notFitting } from "../../builds/prerequisite-model";
import type { ContentOf } from "../part-content";

type Package = ContentOf<"package">;

/** What takes the place of an item that does not carry over; null leaves it out. */
export type Replacements = Readonly<Record<string, string | null>>;

export type NotCarried = {
  readonly code: string;
  readonly name: string;
  /** Where it stands in the package. */
  readonly place: string;
  /** What is the same on the vehicle and fits the other one, the nearest in price first. */
  readonly proposals: readonly { readonly code: string; readonly name: string }[];
};

/** Items of a package that another model of vehicle cannot have, each with what could take its place. */
export function notCarried(catalogue: Catalogue, bundle: Package, modelCode: string): readonly NotCarried[] {
  const barred = new Set(notFitting(catalogue, modelCode));
  const places = [
    { place: "always in it", items: bundle.items },
    ...bundle.choices.map(({ name, items }) => ({ place: `choice “${name}”`, items })),
    { place: "may be added", items: bundle.options },
  ];
  return places.flatMap(({ place, items }) =>
    items
      .filter((code) => barred.has(code))
      .map((code) => {
        const item = catalogue.items.find((each) => each.code === code);
        const alike = catalogue.items
          .filter(
            (each) =>
              item &&
              each.code !== code &&
              !barred.has(each.code) &&
              !items.includes(each.code) &&
              (item.component === "" ? false : each.component === item.component) &&
              each.kind === item.kind,
          )
          .sort(
            (one, other) => distance(one, item) - distance(other, item) || (one.code < other.code ? -1 : 1),
          );
        return {
          code,
          name: item?.name ?? code,
          place,
          proposals: alike.slice(0, 8).map(({ code: proposed, name }) => ({ code: proposed, name })),
        };
      }),
  );
}

type Priced = { readonly priceMinor: number };

function distance(one: Priced, other: Priced | undefined): number {
  return Math.abs(one.priceMinor - (other?.priceMinor ?? 0));
}

/** The package for another model of vehicle, with what takes the place of what does not fit. */
export function copyContent(
  bundle: Package,
  modelCode: string,
  name: string,
  replacements: Replacements,
): Package {
  const carried = (codes: readonly string[]) => [
    ...new Set(
      codes.flatMap((code) => {
        const instead = replacements[code];
        if (instead === undefined) return [code];
        return instead === null ? [] : [instead];
      }),
    ),
  ];
  return {
    ...bundle,
    name,
    models: [modelCode],
    items: carried(bundle.items),
    choices: bundle.choices
      .map((choice) => ({ ...choice, items: carried(choice.items) }))
      .filter(({ items }) => items.length > 0),
    options: carried(bundle.options),
  };
}
