import type { Transaction } from "@buildproof/database";
import { type CapacityUse, capacityUse } from "@buildproof/prerequisites";
import { readSite, type Site } from "../core/site";
import { addDays, dateInZone, isoDateOf } from "../core/site-date";
import type { BuildForecast } from "../engineering/build-forecast";
import { type ForecastVehicle, forecastOfItems } from "../engineering/forecast-of-items";
import { measuredBaseline } from "../engineering/measured-baseline";
import { givenFigures, storedAssumptions } from "../engineering/stored-assumptions";
import type { Catalogue, CataloguePackage } from "./catalogue-rows";
import { type FactsWith, factsWith } from "./facts-with";
import { capacityHeadline } from "./finding-words";
import { inspectionStands } from "./inspection-limits";
import { type Chosen, type Ledger, ledgerOf } from "./ledger";
import { notFitting, prerequisiteModel } from "./prerequisite-model";
import { readCatalogue } from "./read-catalogue";
import { type CheckedBuild, type SheetFinding, sheetFindings } from "./sheet-findings";
import { storedFacts } from "./stored-catalogue";
import { linkName, type SystemCode, systemForLink } from "./systems";
import { factsOf } from "./vehicle-facts";

/** One link of the chain: what is asked against what can be given. */
export type SheetCapacity = CapacityUse & {
  readonly link: string;
  readonly name: string;
  readonly unit: string;
  readonly system: SystemCode;
  readonly safety: boolean;
  readonly sentence: string;
};

export type SheetInspection = {
  readonly id: string;
  readonly doneOn: string;
  readonly doneBy: string;
  readonly odometerKm: number;
  readonly outcome: "passed" | "failed";
  readonly reasons: readonly string[];
  readonly note: string;
  readonly validUntil: string;
  readonly validToOdometerKm: number;
  /** Passed, not too old, not too far. */
  readonly stands: boolean;
};

/** A build as it was read and checked, before anything is said of it. */
export type ReadBuild = Awaited<ReturnType<typeof sheetHead>> & {
  readonly site: Site;
  readonly today: string;
  readonly catalogue: Catalogue;
  readonly chosen: readonly Chosen[];
  /** The selection as it was checked, to ask further what-ifs of. */
  readonly checked: CheckedBuild;
  readonly inspection: SheetInspection | null;
  /** What the chosen items make of the engine. */
  readonly forecast: BuildForecast;
  /** What a forecast of other items on this vehicle would need. */
  readonly forecastVehicle: ForecastVehicle;
};

/** A build with everything that follows from it. */
export type BuildSheet = ReadBuild & {
  readonly findings: readonly SheetFinding[];
  readonly capacities: readonly SheetCapacity[];
  readonly ledger: Ledger;
  /** The first day on which all parts can be here, if they are ordered today. */
  readonly partsBy: string;
  readonly package: CataloguePackage | null;
};

/** Reads a build, checks it and works out what is missing. Null when this workshop has no such build. */
export async function readBuildSheet(
  tx: Transaction,
  buildId: string,
  now: Date,
): Promise<BuildSheet | null> {
  const build = await readCheckedBuild(tx, buildId, now);
  if (!build) return null;
  const { catalogue, checked, packageCode, today } = build;
  return {
    ...build,
    findings: sheetFindings(checked),
    capacities: capacitiesOf(checked),
    ledger: checked.ledger,
    partsBy: addDays(today, checked.ledger.leadDays),
    package: catalogue.packages.find(({ code }) => code === packageCode) ?? null,
  };
}

/** Reads a build and checks it, against another catalogue where one is given. Null when there is no such build. */
export async function readCheckedBuild(
  tx: Transaction,
  buildId: string,
  now: Date,
  given?: Catalogue,
): Promise<ReadBuild | null> {
  const row = await readBuild(tx, buildId);
  if (!row) return null;
  const ground = await readGround(tx, row, now, given);
  const { site, today, catalogue, inspection, forecastVehicle } = ground;
  const chosen = row.items.map(({ item, quantity }) => ({ code: item.code, quantity }));
  const forecast = forecastOfItems(forecastVehicle, catalogue.items, new Set(chosen.map(({ code }) => code)));
  const modelCode = row.vehicle.vehicleModel.code;
  const checked = checkBuild(catalogue, site, chosen, { modelCode, factsWith: ground.factsWith });
  return {
    ...sheetHead(row),
    site,
    today,
    catalogue,
    chosen,
    checked,
    inspection,
    forecast,
    forecastVehicle,
  };
}

/** What every choice on a vehicle is judged by: the catalogue, the place, the inspection, the forecast's ground. */
export async function readGround(
  tx: Transaction,
  { vehicle, assumptions }: Pick<BuildRow, "vehicle" | "assumptions">,
  now: Date,
  given?: Catalogue,
) {
  const site = await readSite(tx);
  const catalogue = given ?? (await readCatalogue(tx));
  const today = dateInZone(now, site.timeZone);
  const inspection = await readInspection(tx, vehicle, site.timeZone, today);
  const forecastVehicle = await readForecastVehicle(tx, { vehicle, assumptions }, site);
  const modelFacts = storedFacts.parse(vehicle.vehicleModel.facts);
  // The torque is that of whatever is asked about.
  const build = { inspectionStands: inspection?.stands ?? false, crankTorqueNm: 0 };
  const facts = factsOf({ ...vehicle, modelFacts }, site, build);
  return {
    site,
    catalogue,
    today,
    inspection,
    forecastVehicle,
    factsWith: factsWith(facts, catalogue, forecastVehicle),
  };
}

type BuildRow = NonNullable<Awaited<ReturnType<typeof readBuild>>>;

async function readForecastVehicle(
  tx: Transaction,
  { vehicle, assumptions }: Pick<BuildRow, "vehicle" | "assumptions">,
  { timeZone, designAmbientC, altitudeM }: Site,
): Promise<ForecastVehicle> {
  const { fuelKind, fuelOctane, vehicleModel } = vehicle;
  return {
    fuelKind,
    fuelOctane,
    modelName: vehicleModel.name,
    modelFigures: vehicleModel.figures,
    measured: await measuredBaseline(tx, vehicle.id, timeZone),
    designAmbientC,
    altitudeM,
    given: givenFigures(storedAssumptions.parse(assumptions)),
  };
}

/** A selection for a vehicle, ready to be asked what is wrong with it. Items that do not fit are barred. */
export function checkBuild(
  catalogue: Catalogue,
  site: Site,
  chosen: readonly Chosen[],
  { modelCode, factsWith }: { readonly modelCode: string; readonly factsWith: FactsWith },
): CheckedBuild {
  const codes = chosen.map(({ code }) => code);
  const facts = factsWith(codes);
  const model = prerequisiteModel(catalogue, site, modelCode, facts);
  return {
    catalogue,
    site,
    chosen,
    ledger: ledgerOf(catalogue, site, chosen),
    model,
    facts,
    factsWith,
    barred: notFitting(catalogue, modelCode).filter((code) => !codes.includes(code)),
    uses: capacityUse(model, codes),
  };
}

function readBuild(tx: Transaction, buildId: string) {
  return tx.build.findUnique({
    where: { id: buildId },
    include: {
      customer: true,
      vehicle: { include: { vehicleModel: true } },
      items: { orderBy: { position: "asc" }, include: { item: { select: { code: true } } } },
    },
  });
}

function sheetHead(row: NonNullable<Awaited<ReturnType<typeof readBuild>>>) {
  const { customer, vehicle } = row;
  return {
    id: row.id,
    number: row.number,
    goal: row.goal,
    wantedBy: row.wantedBy ? isoDateOf(row.wantedBy) : null,
    packageCode: row.packageCode,
    revision: row.revision,
    /** What its forecast assumes otherwise than usual, and why. */
    assumptionChanges: storedAssumptions.parse(row.assumptions),
    savedAt: row.updatedAt,
    customer: { id: customer.id, name: customer.name },
    vehicle: {
      id: vehicle.id,
      vin: vehicle.vin,
      plate: vehicle.plate,
      odometerKm: vehicle.odometerKm,
      fuelKind: vehicle.fuelKind,
      fuelOctane: vehicle.fuelOctane,
      uses: vehicle.uses,
      trailerGtmKg: vehicle.trailerGtmKg,
      alreadyFitted: vehicle.alreadyFitted,
      modelCode: vehicle.vehicleModel.code,
      modelName: vehicle.vehicleModel.name,
      engine: vehicle.vehicleModel.engine,
    },
  };
}

/** The newest inspection of the vehicle, whichever build it was made for. */
async function readInspection(
  tx: Transaction,
  vehicle: { readonly id: string; readonly odometerKm: number },
  timeZone: string,
  today: string,
): Promise<SheetInspection | null> {
  const row = await tx.inspection.findFirst({
    where: { vehicleId: vehicle.id },
    orderBy: [{ doneAt: "desc" }, { id: "desc" }],
    include: { doneBy: true },
  });
  if (!row) return null;
  const { id, odometerKm, outcome, reasons, note, validToOdometerKm } = row;
  const validUntil = isoDateOf(row.validUntil);
  const stands = inspectionStands(
    { outcome, validUntil, validToOdometerKm },
    { today, odometerKm: vehicle.odometerKm },
  );
  const doneOn = dateInZone(row.doneAt, timeZone);
  return {
    id,
    odometerKm,
    outcome,
    reasons,
    note,
    validToOdometerKm,
    validUntil,
    stands,
    doneOn,
    doneBy: row.doneBy.name,
  };
}

/** Every capacity that the selection uses, with the link of the chain it stands for. */
export function capacitiesOf({ catalogue, uses }: CheckedBuild): readonly SheetCapacity[] {
  return uses.flatMap((use) => {
    const rule = catalogue.rules.find(({ code }) => code === use.rule);
    if (rule?.kind !== "capacity") return [];
    const { link, unit, safety } = rule;
    const sentence = capacityHeadline(link, unit, use);
    return [{ ...use, link, name: linkName(link), unit, system: systemForLink(link), safety, sentence }];
  });
}
