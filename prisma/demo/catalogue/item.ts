import type { CatalogueItem, ItemKind, ModelId, SystemId } from "./types";

export const ridgewolds: readonly ModelId[] = ["ridgewold-57", "ridgewold-57-lift"];
export const everyModel: readonly ModelId[] = [
  ...ridgewolds,
  "vale-30td",
  "orrismere-gt44",
  "bramlet-trail-20",
];

/** Those with a spark-ignition V8, on which a blower can be built. */
export const boosted: readonly ModelId[] = [...ridgewolds, "orrismere-gt44"];
/** Those that are asked to tow what has brakes of its own. */
export const towing: readonly ModelId[] = [...ridgewolds, "vale-30td"];

type Exceptions = Partial<Omit<CatalogueItem, "id" | "code" | "name" | "system" | "kind" | "maker">>;

/** Money in whole dollars, as a price list has it; everything not said is the usual case. */
interface Listed extends Exceptions {
  readonly cost: number;
  readonly sell: number;
}

/** One item of the catalogue from its price-list line. */
export function item(
  system: SystemId,
  kind: ItemKind,
  id: string,
  code: string,
  maker: string,
  name: string,
  listed: Listed,
): CatalogueItem {
  const { cost, sell, ...exceptions } = listed;
  return {
    id,
    code,
    name,
    system,
    kind,
    maker,
    priceCents: sell * 100,
    costCents: cost * 100,
    leadDays: 0,
    massKg: 0,
    returnable: true,
    oneUse: false,
    serialised: false,
    figures: {},
    fits: ridgewolds,
    operations: [],
    ...exceptions,
  };
}
