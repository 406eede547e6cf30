import { catalogue } from "./catalogue/catalogue";
import { componentOf } from "./catalogue/item-component";
import type { Condition, ProcedureStep, VehicleModel } from "./catalogue/types";
import type { DemoWorkshop } from "./demo-workshop";

/** What the demo finds in a workshop's catalogue. */
export type CatalogueRows = {
  readonly modelId: (code: string) => string;
  readonly itemId: (code: string) => string;
};

/** Copies the invented catalogue into a workshop, where its owner may then change it. */
export function addCatalogue(workshop: DemoWorkshop): CatalogueRows {
  addOperations(workshop);
  addRules(workshop);
  addPackages(workshop);
  const models = addModels(workshop);
  const items = addItems(workshop);
  return { modelId: found(models), itemId: found(items) };
}

const madeAt = ({ anchor }: DemoWorkshop) => new Date(anchor.getTime() - 790 * 86_400_000);

const found = (ids: ReadonlyMap<string, string>) => (code: string) => {
  const id = ids.get(code);
  if (id === undefined) throw new Error(`the demo catalogue has no ${code}`);
  return id;
};

function addModels(workshop: DemoWorkshop): Map<string, string> {
  const ids = new Map<string, string>();
  for (const model of catalogue.models) {
    const id = workshop.newId(madeAt(workshop));
    ids.set(model.id, id);
    workshop.rows.add("vehicleModel", {
      id,
      workshopId: workshop.id,
      code: model.id,
      name: `${model.maker} ${model.name}`,
      engine: model.engine,
      facts: model.facts,
      figures: figuresOf(model),
    });
  }
  return ids;
}

function figuresOf({
  id: _id,
  name: _name,
  engine: _engine,
  facts: _facts,
  figures,
  ...shown
}: VehicleModel) {
  return { ...shown, ...figures };
}

function addItems(workshop: DemoWorkshop): Map<string, string> {
  const ids = new Map<string, string>();
  catalogue.items.forEach((item, position) => {
    const id = workshop.newId(madeAt(workshop));
    ids.set(item.id, id);
    workshop.rows.add("item", {
      id,
      workshopId: workshop.id,
      code: item.id,
      name: item.name,
      system: item.system,
      kind: item.kind,
      component: componentOf(item),
      maker: item.maker,
      note: [`Part ${item.code}.`, item.note ?? ""].join(" ").trim(),
      priceMinor: item.priceCents,
      costMinor: item.costCents,
      leadDays: item.leadDays,
      inStock: item.leadDays === 0 ? 0 : stockOf(item.priceCents),
      massKg: item.massKg,
      returnable: item.returnable,
      oneUse: item.oneUse,
      serialised: item.serialised,
      figures: item.figures,
      fits: [...item.fits],
      operations: [...item.operations],
      position,
    });
  });
  return ids;
}

/** Small things are kept on the shelf, dear ones are ordered for the job. */
function stockOf(priceCents: number): number {
  if (priceCents < 300_00) return 4;
  return priceCents < 800_00 ? 1 : 0;
}

function addOperations(workshop: DemoWorkshop): void {
  for (const access of catalogue.access) {
    workshop.rows.add("accessWork", {
      id: workshop.newId(madeAt(workshop)),
      workshopId: workshop.id,
      code: access.id,
      name: access.name,
      hours: access.hours,
      rate: access.rate,
      needs: [...access.needs],
      steps: { out: access.out.map(plainStep), back: access.back.map(plainStep) },
    });
  }
  for (const operation of catalogue.operations) {
    const operationId = workshop.newId(madeAt(workshop));
    workshop.rows.add("operation", {
      id: operationId,
      workshopId: workshop.id,
      code: operation.id,
      name: operation.name,
      hours: operation.ownHours,
      rate: operation.rate,
      access: [...operation.access],
      place: operation.place,
      skill: operation.skill,
      stage: operation.stage,
      position: operation.order,
    });
    operation.steps.forEach((step, position) => {
      workshop.rows.add("procedureStep", {
        id: workshop.newId(madeAt(workshop)),
        workshopId: workshop.id,
        operationId,
        position,
        ...plainStep(step),
      });
    });
  }
}

/** A step as the database holds it: in the procedure, on a job card, or inside access work. */
export function plainStep(step: ProcedureStep) {
  return {
    text: step.text,
    kind: step.kind === "hold-point" ? ("holdPoint" as const) : step.kind,
    unit: step.unit ?? "",
    low: step.low ?? null,
    target: step.target ?? null,
    high: step.high ?? null,
    cautions: [...(step.cautions ?? [])],
    oneUsePart: step.oneUsePart ?? "",
    signer: step.signer ?? "",
  };
}

const picks = {
  "at-most-one": "atMostOne",
  "exactly-one": "exactlyOne",
  "at-least-one": "atLeastOne",
} as const;

function addRules(workshop: DemoWorkshop): void {
  catalogue.groups.forEach((group, position) => {
    workshop.rows.add("itemGroup", {
      id: workshop.newId(madeAt(workshop)),
      workshopId: workshop.id,
      code: group.id,
      name: group.name,
      pick: picks[group.pick],
      items: [...group.items],
      position,
    });
  });
  catalogue.rules.forEach((rule, position) => {
    const isCapacity = rule.kind === "capacity";
    workshop.rows.add("rule", {
      id: workshop.newId(madeAt(workshop)),
      workshopId: workshop.id,
      code: rule.id,
      kind: rule.kind,
      ...(isCapacity
        ? {
            quantity: rule.quantity,
            unit: rule.unit,
            link: rule.link,
            baseFact: rule.baseFact,
            supply: rule.supply,
            demand: rule.demand,
            reservePct: rule.reservePct,
          }
        : // biome-ignore lint/suspicious/noThenProperty: the condition language of the rules has this word.
          { ...(rule.when ? { when: asJson(rule.when) } : {}), then: asJson(rule.then) }),
      because: rule.because,
      source: rule.source,
      safety: rule.safety,
      models: [...rule.models],
      position,
    });
  });
}

function addPackages(workshop: DemoWorkshop): void {
  catalogue.packages.forEach((bundle, position) => {
    workshop.rows.add("package", {
      id: workshop.newId(madeAt(workshop)),
      workshopId: workshop.id,
      code: bundle.id,
      name: bundle.name,
      outcome: bundle.outcome,
      models: [...bundle.models],
      items: [...bundle.items],
      ...(bundle.promise ? { promise: { ...bundle.promise } } : {}),
      assumptions: [...bundle.assumptions],
      exclusions: [...bundle.exclusions],
      cautions: [...bundle.cautions],
      position,
    });
  });
}

type Json = { readonly [name: string]: string | number | Json | readonly Json[] };

/** A condition is JSON already; only its recursive type has to be told so. */
const asJson = (condition: Condition): Json => JSON.parse(JSON.stringify(condition));
