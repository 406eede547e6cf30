import type { Transaction } from "@buildproof/database";
import { checkPrerequisites } from "@buildproof/prerequisites";
import type { Catalogue, CatalogueRule } from "../builds/catalogue-rows";
import { findingHeadline, namedFacts, namedItems } from "../builds/finding-words";
import { asRule, prerequisiteModel, rulesFor } from "../builds/prerequisite-model";
import { readCatalogue } from "../builds/read-catalogue";
import { storedFacts } from "../builds/stored-catalogue";
import { factsOf } from "../builds/vehicle-facts";
import { readSite, type Site } from "../core/site";
import { askedTorqueNm, type ForecastVehicle, forecastOfItems } from "../engineering/forecast-of-items";
import { readForecastRecord } from "../engineering/forecast-record";
import type { MeasuredBaseline } from "../engineering/power-baseline";
import { selectionOf } from "./accepted-selection";
import type { GateJob } from "./gate-job";
import { type GatePoint, gatePoint } from "./gate-point";

/** What is the same for every job of a workshop, read once. */
export type GateCatalogue = { readonly catalogue: Catalogue; readonly site: Site };

export async function readGateCatalogue(tx: Transaction): Promise<GateCatalogue> {
  return { catalogue: await readCatalogue(tx), site: await readSite(tx) };
}

const inspectionFact = "inspectionPassed";

/**
 * The accepted selection, checked again on the vehicle as it is now: a fuel that was recorded since, or an
 * odometer that has run past a limit, shows here.
 */
export function prerequisitePoints(
  { catalogue, site }: GateCatalogue,
  job: GateJob,
  stands: { readonly inspection: boolean; readonly baseline: MeasuredBaseline | null },
): readonly GatePoint[] {
  const codes = selectionOf(job.version.selection).map(({ code }) => code);
  const forecast = forecastOfItems(gateVehicle(job, site, stands.baseline), catalogue.items, new Set(codes));
  const facts = gateFacts(job, site, {
    inspectionStands: stands.inspection,
    crankTorqueNm: askedTorqueNm(forecast),
  });
  const model = prerequisiteModel(catalogue, site, job.vehicle.vehicleModel.code, facts);
  const { findings } = checkPrerequisites(model, codes, facts);
  const situation = { catalogue, chosen: new Set(codes), facts };
  const open = findings.map((finding) => {
    const rule = catalogue.rules.find(({ code }) => code === finding.rule);
    const headline = findingHeadline(finding, rule, undefined, situation);
    return gatePoint({
      point: `prerequisite:${finding.rule}`,
      title: headline,
      met: false,
      sentence: `${headline}. ${rule?.because ?? finding.because}`,
      resolve: "Front desk: put the build right and issue a new version for the customer to accept.",
      place: "build",
      safety: rule?.safety ?? false,
    });
  });
  if (open.length > 0) return open;
  return [
    gatePoint({
      point: "prerequisites",
      title: "Prerequisites of the accepted selection",
      met: true,
      sentence: `All prerequisites of the ${codes.length} accepted items are met on this vehicle.`,
      place: "build",
    }),
  ];
}

/** Whether a rule asks for a passed inspection before this selection is built. */
export function asksForInspection({ catalogue, site }: GateCatalogue, job: GateJob): boolean {
  const codes = selectionOf(job.version.selection).map(({ code }) => code);
  const modelCode = job.vehicle.vehicleModel.code;
  const facts = gateFacts(job, site, { inspectionStands: false, crankTorqueNm: 0 });
  return rulesFor(catalogue, modelCode).some((rule) => {
    if (rule.kind !== "needs" || !namedFacts(rule.then).includes(inspectionFact)) return false;
    // Having it on the quote is not having it done: without the item, does the rule speak?
    const bought = new Set(namedItems(rule.then));
    return failsAlone(
      rule,
      codes.filter((code) => !bought.has(code)),
      facts,
      catalogue,
    );
  });
}

function failsAlone(
  rule: Extract<CatalogueRule, { kind: "needs" | "excludes" }>,
  codes: readonly string[],
  facts: ReturnType<typeof gateFacts>,
  catalogue: Catalogue,
): boolean {
  const model = {
    items: catalogue.items.map(({ code }) => ({ id: code })),
    rules: [asRule(rule, facts)],
  };
  return !checkPrerequisites(model, codes, facts).ok;
}

function gateFacts(job: GateJob, site: Site, build: Parameters<typeof factsOf>[2]) {
  const { vehicle } = job;
  const modelFacts = storedFacts.parse(vehicle.vehicleModel.facts);
  return factsOf({ ...vehicle, modelFacts }, site, build);
}

function gateVehicle(
  { vehicle, version }: GateJob,
  { designAmbientC, altitudeM }: Site,
  measured: MeasuredBaseline | null,
): ForecastVehicle {
  const { fuelKind, fuelOctane, vehicleModel } = vehicle;
  return {
    fuelKind,
    fuelOctane,
    modelName: vehicleModel.name,
    modelFigures: vehicleModel.figures,
    measured,
    designAmbientC,
    altitudeM,
    // What was assumed when the version was made is part of what was accepted.
    given: Object.fromEntries(
      (readForecastRecord(version.forecast)?.changed ?? []).map(({ name, used }) => [name, used]),
    ),
  };
}
