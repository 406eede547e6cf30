import type { MinorUnits } from "@buildproof/units";
import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { chassisOfSheet } from "../engineering/chassis-of-sheet";
import { refuseBuild } from "./build-refusals";
import type { CatalogueItem } from "./catalogue-rows";
import { type ChoiceObstacle, choiceObstacles } from "./choice-obstacles";
import { readSiblings } from "./compare-builds";
import { rivalsOf } from "./exclusion";
import { itemByCode, ledgerOf, priceWithTax } from "./ledger";
import { offeredPackages } from "./offered-packages";
import { notFitting } from "./prerequisite-model";
import { type BuildSheet, readBuildSheet } from "./read-build-sheet";
import { systems } from "./systems";

/** The build sheet as its page draws it: everything worked out, nothing left to the page. */
export const showSheet = query({
  name: "builds.sheet",
  permission: "builds:read",
  input: z.strictObject({ buildId: z.uuid("Open the build from the list.") }),
  async run({ tx, now }, { buildId }) {
    const sheet = await readBuildSheet(tx, buildId, now);
    if (!sheet) return refuseBuild("build-not-found");
    const quote = await tx.quote.findFirst({
      where: { buildId },
      orderBy: { number: "desc" },
      select: { id: true, number: true },
    });
    const siblings = await readSiblings(tx, { id: buildId, vehicleId: sheet.vehicle.id });
    return ok({ ...shown(sheet), quote, siblings });
  },
});

export type ShownSheet = ReturnType<typeof shown>;

function shown(sheet: BuildSheet) {
  const { catalogue, checked: _, forecastVehicle: __, site, ...rest } = sheet;
  return {
    ...rest,
    chassis: chassisOfSheet(sheet),
    site: { name: site.name, timeZone: site.timeZone, currency: site.currency },
    systems: systemsOf(sheet),
    packages: offeredPackages(catalogue, site, sheet.vehicle.modelCode),
  };
}

export type SheetChoice = {
  readonly code: string;
  readonly name: string;
  /** Of one, with tax, its labour not included. */
  readonly grossMinor: MinorUnits;
  /** Why it cannot be chosen beside the others, and what would have to go for it; else null. */
  readonly obstacle: ChoiceObstacle | null;
  /** Names of what it takes the place of. */
  readonly replaces: readonly string[];
};

function systemsOf(sheet: BuildSheet) {
  const { catalogue, vehicle, chosen, findings } = sheet;
  const barred = new Set(notFitting(catalogue, vehicle.modelCode));
  const isChosen = new Set(chosen.map(({ code }) => code));
  const obstacleOf = choiceObstacles(sheet);
  return systems.map(({ code, name }) => {
    const items = catalogue.items.filter(({ system }) => system === code);
    const fitting = items.filter((item) => !barred.has(item.code));
    return {
      code,
      name,
      chosen: chosen.flatMap((each) => {
        const item = items.find((one) => one.code === each.code);
        return item ? [chosenLine(sheet, item, each.quantity)] : [];
      }),
      choices: fitting
        .filter((item) => !isChosen.has(item.code))
        .map((item) => choice(sheet, item, isChosen, obstacleOf)),
      /** Whether the catalogue has nothing in this system for this model. */
      hasNothing: fitting.length === 0,
      findings: findings.filter(({ system }) => system === code),
    };
  });
}

function chosenLine(sheet: BuildSheet, item: CatalogueItem, quantity: number) {
  const alone = ledgerOf(sheet.catalogue, sheet.site, [{ code: item.code, quantity }]);
  return {
    code: item.code,
    name: item.name,
    maker: item.maker,
    note: item.note,
    kind: item.kind,
    quantity,
    /** Of all pieces, with tax, labour not included. */
    grossMinor: alone.parts.grossMinor,
    /** If it were the only work: what is shared is counted once in the ledger. */
    labourHours: alone.labourHours,
    dynoHours: alone.dynoHours,
    leadDays: alone.leadDays,
    returnable: item.returnable,
    fits: item.fits.length === 0 || item.fits.includes(sheet.vehicle.modelCode),
  };
}

function choice(
  sheet: BuildSheet,
  item: CatalogueItem,
  isChosen: ReadonlySet<string>,
  obstacleOf: ReturnType<typeof choiceObstacles>,
): SheetChoice {
  return {
    code: item.code,
    name: item.name,
    grossMinor: priceWithTax(sheet.site, item.priceMinor),
    obstacle: obstacleOf(item.code),
    replaces: rivalsOf(sheet.catalogue, item.code)
      .filter((code) => isChosen.has(code))
      .map((code) => itemByCode(sheet.catalogue, code).name),
  };
}
