import type { Transaction } from "@buildproof/database";
import { margin } from "@buildproof/pricing";
import { minorUnits } from "@buildproof/units";
import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { refuseBuild } from "./build-refusals";
import { itemByCode, type Ledger } from "./ledger";
import { type BuildSheet, readBuildSheet } from "./read-build-sheet";

/** Two builds side by side: what differs in what is chosen, and what follows from each. */
export const compareBuilds = query({
  name: "builds.compare",
  permission: "builds:read",
  input: z.strictObject({
    leftId: z.uuid("Open one of the builds and compare it from there."),
    rightId: z.uuid("Choose the build to compare with."),
  }),
  async run({ tx, now, person }, { leftId, rightId }) {
    const left = await readBuildSheet(tx, leftId, now);
    const right = await readBuildSheet(tx, rightId, now);
    if (!left || !right) return refuseBuild("build-not-found");
    const seesMargin = mayDo("quote-margin:read", person.roles);
    const others = await readSiblings(tx, { id: left.id, vehicleId: left.vehicle.id });
    return ok({
      currency: left.site.currency,
      left: side(left, right, seesMargin),
      right: side(right, left, seesMargin),
      inBoth: left.chosen
        .filter(({ code }) => quantityOf(right, code) > 0)
        .map(({ code }) => itemByCode(left.catalogue, code).name),
      links: linksOf(left, right),
      others,
    });
  },
});

/** Other builds of a vehicle, the newest first, to compare one with. */
export function readSiblings(tx: Transaction, build: { readonly id: string; readonly vehicleId: string }) {
  return tx.build.findMany({
    where: { vehicleId: build.vehicleId, id: { not: build.id } },
    orderBy: { number: "desc" },
    take: 20,
    select: { id: true, number: true, goal: true },
  });
}

export type ComparedBuild = ReturnType<typeof side>;

function side(build: BuildSheet, other: BuildSheet, seesMargin: boolean) {
  const { id, number, goal, vehicle, customer, ledger, partsBy, forecast, findings } = build;
  return {
    id,
    number,
    goal,
    vehicle: { id: vehicle.id, modelName: vehicle.modelName, plate: vehicle.plate },
    customer,
    packageName: build.package?.name ?? null,
    /** What the other has not, or has in another number. */
    only: build.chosen
      .filter(({ code, quantity }) => quantityOf(other, code) !== quantity)
      .map(({ code, quantity }) => ({ code, name: itemByCode(build.catalogue, code).name, quantity })),
    findings: findings.map(({ rule, headline, safety }) => ({ rule, headline, safety })),
    forecast:
      forecast.kind === "forecast"
        ? { power: forecast.power, torque: forecast.torque, reference: forecast.reference }
        : { sentence: forecast.sentence },
    grossMinor: ledger.total.grossMinor,
    labourHours: ledger.labourHours,
    dynoHours: ledger.dynoHours,
    leadDays: ledger.leadDays,
    partsBy,
    margin: seesMargin ? marginOf(ledger) : null,
  };
}

function quantityOf({ chosen }: BuildSheet, code: string): number {
  return chosen.find((each) => each.code === code)?.quantity ?? 0;
}

function marginOf({ lines, total }: Ledger) {
  const cost = lines.reduce((sum, line) => sum + Number(line.quantity) * line.unitCostMinor, 0);
  const costMinor = minorUnits(Math.round(cost));
  return { costMinor, marginBasisPoints: margin(total.netMinor, costMinor) };
}

/** Each link of the chain that either build asks something of. */
function linksOf(left: BuildSheet, right: BuildSheet) {
  const rules = [...new Set([...left.capacities, ...right.capacities].map(({ rule }) => rule))];
  return rules.flatMap((rule) => {
    const [a, b] = [left, right].map(({ capacities }) => capacities.find((each) => each.rule === rule));
    const name = a?.name ?? b?.name ?? rule;
    if ((a?.demand ?? 0) === 0 && (b?.demand ?? 0) === 0) return [];
    return [{ rule, name, left: a ?? null, right: b ?? null }];
  });
}
