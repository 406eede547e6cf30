import type { MinorUnits } from "@buildproof/units";
import { z } from "zod";
import { ok } from "../core/result";
import { readSite, type Site } from "../core/site";
import { query } from "../core/use-case";
import { refuseBuild } from "./build-refusals";
import type { Catalogue, CataloguePackage } from "./catalogue-rows";
import { itemByCode, priceWithTax } from "./ledger";
import { offeredOf } from "./package-selection";
import { readCatalogue } from "./read-catalogue";

/** One thing that a package leaves open. */
export type OfferedItem = {
  readonly code: string;
  readonly name: string;
  /** Of one, with tax, its labour not included. */
  readonly grossMinor: MinorUnits;
};

/** A package as it is offered for a model of vehicle. */
export type OfferedPackage = Pick<CataloguePackage, "code" | "name" | "outcome"> & {
  readonly choices: readonly {
    readonly name: string;
    readonly pick: CataloguePackage["choices"][number]["pick"];
    readonly items: readonly OfferedItem[];
  }[];
  readonly options: readonly OfferedItem[];
};

/** The packages made for a vehicle, each with what it leaves to its owner. */
export const listOfferedPackages = query({
  name: "builds.offered-packages",
  permission: "builds:read",
  input: z.strictObject({ vehicleId: z.uuid("Choose the vehicle first.") }),
  async run({ tx }, { vehicleId }) {
    const vehicle = await tx.vehicle.findUnique({
      where: { id: vehicleId },
      select: { vehicleModel: { select: { code: true } } },
    });
    if (!vehicle) return refuseBuild("vehicle-not-found");
    const site = await readSite(tx);
    const packages = offeredPackages(await readCatalogue(tx), site, vehicle.vehicleModel.code);
    return ok({ currency: site.currency, packages });
  },
});

export function offeredPackages(
  catalogue: Catalogue,
  site: Site,
  modelCode: string,
): readonly OfferedPackage[] {
  const offered = (code: string): OfferedItem => {
    const { name, priceMinor } = itemByCode(catalogue, code);
    return { code, name, grossMinor: priceWithTax(site, priceMinor) };
  };
  return catalogue.packages
    .filter(({ models }) => models.length === 0 || models.includes(modelCode))
    .map((bundle) => {
      const { choices, options } = offeredOf(catalogue, bundle, modelCode);
      return {
        code: bundle.code,
        name: bundle.name,
        outcome: bundle.outcome,
        choices: choices.map(({ name, pick, items }) => ({ name, pick, items: items.map(offered) })),
        options: options.map(offered),
      };
    });
}
