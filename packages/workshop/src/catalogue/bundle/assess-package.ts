import type { Catalogue } from "../../builds/catalogue-rows";
import { factsWith } from "../../builds/facts-with";
import { type Chosen, type Ledger, ledgerOf } from "../../builds/ledger";
import { offeredOf } from "../../builds/package-selection";
import { notFitting } from "../../builds/prerequisite-model";
import { checkBuild } from "../../builds/read-build-sheet";
import { sheetFindings } from "../../builds/sheet-findings";
import { storedFacts } from "../../builds/stored-catalogue";
import { factsOf } from "../../builds/vehicle-facts";
import type { Site } from "../../core/site";
import type { BuildForecast } from "../../engineering/build-forecast";
import { askedTorqueNm, type ForecastVehicle, forecastOfItems } from "../../engineering/forecast-of-items";
import { modelFigures } from "../../engineering/stored-figures";
import type { ContentOf } from "../part-content";
import { type PromiseStanding, promiseStanding } from "./promise-standing";

/** A model of vehicle as its row holds it. */
export type ModelRow = {
  readonly code: string;
  readonly name: string;
  readonly facts: unknown;
  readonly figures: unknown;
};

/** What a package is on one model of vehicle: a sound one, inspected, on the fuel it is usually given. */
export type PackageOnModel = {
  readonly modelCode: string;
  readonly modelName: string;
  /** With the first of each choice that must be made, nothing added. */
  readonly chosen: readonly { readonly code: string; readonly name: string }[];
  readonly ledger: Ledger;
  readonly doesNotFit: readonly { readonly code: string; readonly name: string }[];
  readonly findings: readonly {
    readonly rule: string;
    readonly headline: string;
    readonly because: string;
    readonly safety: boolean;
    /** Names of what would put it right, the best first. */
    readonly fixes: readonly string[];
  }[];
  readonly promise: PromiseStanding;
};

/** Premium petrol, which boosted packages are promised on. */
const usualOctaneRon = 98;

/** Works a package out on a model of vehicle: price, what is wrong with it, and whether its promise stands. */
export function assessPackage(
  catalogue: Catalogue,
  site: Site,
  model: ModelRow,
  bundle: ContentOf<"package">,
): PackageOnModel {
  const sold = catalogue.items.filter(({ retired }) => !retired);
  const named = (code: string) => ({
    code,
    name: catalogue.items.find((each) => each.code === code)?.name ?? code,
  });
  const barred = new Set(notFitting(catalogue, model.code));
  const everything = [...bundle.items, ...bundle.choices.flatMap(({ items }) => items), ...bundle.options];
  const first = offeredOf(catalogue, bundle, model.code)
    .choices.filter(({ pick }) => pick !== "at-most-one")
    .flatMap(({ items }) => items.slice(0, 1));
  const codes = [...new Set([...bundle.items, ...first])].filter((code) =>
    sold.some((each) => each.code === code),
  );
  const chosen: readonly Chosen[] = codes.map((code) => ({ code, quantity: 1 }));
  const vehicle = usualVehicle(model, site);
  const forecast = forecastOfItems(vehicle, catalogue.items, new Set(codes));
  const facts = factsOf(
    {
      odometerKm: 0,
      fuelKind: vehicle.fuelKind,
      fuelOctane: vehicle.fuelOctane,
      trailerGtmKg: bundle.promise?.towKg ?? null,
      modelFacts: storedFacts.parse(model.facts),
    },
    site,
    { inspectionStands: true, crankTorqueNm: askedTorqueNm(forecast) },
  );
  const checked = checkBuild(catalogue, site, chosen, {
    modelCode: model.code,
    factsWith: factsWith(facts, catalogue, vehicle),
  });
  return {
    modelCode: model.code,
    modelName: model.name,
    chosen: codes.map(named),
    ledger: ledgerOf(catalogue, site, chosen),
    doesNotFit: [...new Set(everything)].filter((code) => barred.has(code)).map(named),
    findings: sheetFindings(checked).map(({ rule, headline, because, safety, fixes }) => ({
      rule,
      headline,
      because,
      safety,
      fixes: fixes.map((fix) => fix.add.map(({ name }) => name).join(", ")).filter((words) => words !== ""),
    })),
    promise: standingOf(bundle, forecast),
  };
}

function standingOf(bundle: ContentOf<"package">, forecast: BuildForecast): PromiseStanding {
  const promise = bundle.promise && "lowKw" in bundle.promise ? bundle.promise : null;
  return promiseStanding(promise, forecast);
}

function usualVehicle(model: ModelRow, { designAmbientC, altitudeM }: Site): ForecastVehicle {
  const figures = modelFigures.safeParse(model.figures);
  const isDiesel = figures.success && figures.data.fuelKind === "diesel";
  return {
    fuelKind: isDiesel ? "diesel" : "petrol",
    fuelOctane: isDiesel ? null : usualOctaneRon,
    modelName: model.name,
    modelFigures: model.figures,
    measured: null,
    designAmbientC,
    altitudeM,
    given: {},
  };
}
