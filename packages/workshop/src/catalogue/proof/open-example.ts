import type { Transaction } from "@buildproof/database";
import { checkPrerequisites, type Model } from "@buildproof/prerequisites";
import { z } from "zod";
import { itemCode } from "../../builds/build-fields";
import type { Catalogue } from "../../builds/catalogue-rows";
import { asRule, notFitting, rulesFor } from "../../builds/prerequisite-model";
import { readCatalogue } from "../../builds/read-catalogue";
import { setItems } from "../../builds/set-items";
import { startBuild } from "../../builds/start-build";
import { storedFacts } from "../../builds/stored-catalogue";
import { factsOf } from "../../builds/vehicle-facts";
import { ok } from "../../core/result";
import { readSite } from "../../core/site";
import { command } from "../../core/use-case";
import { refuseCatalogue } from "../refuse-catalogue";

/**
 * Opens the example of a limit that can be exceeded on a build sheet of its own, on that vehicle of the model which
 * is nearest to it. The sheet says what is wrong as with any build; who has seen enough deletes nothing of others.
 */
export const openExample = command({
  name: "catalogue.open-example",
  permission: "catalogue:write",
  input: z.strictObject({
    modelCode: z.string().min(1, "Choose the vehicle model."),
    limit: z.string().min(1, "Choose the limit."),
    items: z.array(itemCode).min(1, "An example has at least one item.").max(500),
  }),
  async run(work, { modelCode, limit, items }) {
    const catalogue = await readCatalogue(work.tx);
    const unknown = items.find((code) => !catalogue.items.some((item) => item.code === code));
    if (unknown !== undefined) return refuseCatalogue("example-drafted", { code: unknown });
    const vehicle = await nearestVehicle(work.tx, catalogue, modelCode, items);
    if (!vehicle) return refuseCatalogue("no-such-vehicle", { model: modelCode });
    const rule = catalogue.rules.find(({ code }) => code === limit);
    const name = rule?.kind === "capacity" ? rule.quantity : limit;
    const started = await startBuild.run(work, {
      vehicleId: vehicle,
      goal: `Example from the catalogue’s proof: ${name} exceeded. Not for a customer.`,
      wantedBy: null,
      packageCode: null,
      picked: [],
      items: [],
    });
    if (!started.ok) return started;
    const { id, number } = started.value;
    const wanted = items.map((code) => ({ code, quantity: 1 }));
    await setItems(work, id, catalogue, wanted);
    work.audit({ entity: "build", entityId: id, after: { number, items, exampleOf: limit } });
    return ok({ id, number });
  },
});

/** Of the workshop's vehicles of a model, the one on which fewest rules speak against these items. */
async function nearestVehicle(
  tx: Transaction,
  catalogue: Catalogue,
  modelCode: string,
  items: readonly string[],
): Promise<string | null> {
  const site = await readSite(tx);
  const vehicles = await tx.vehicle.findMany({
    where: { vehicleModel: { code: modelCode } },
    include: { vehicleModel: { select: { facts: true } } },
    orderBy: { createdAt: "asc" },
    take: 200,
  });
  const fitting = items.filter((code) => !notFitting(catalogue, modelCode).includes(code));
  let best: { readonly id: string; readonly against: number } | null = null;
  for (const { id, vehicleModel, ...vehicle } of vehicles) {
    const modelFacts = storedFacts.parse(vehicleModel.facts);
    const facts = factsOf({ ...vehicle, modelFacts }, site, { inspectionStands: false, crankTorqueNm: 0 });
    const model: Model = {
      items: catalogue.items.map(({ code }) => ({ id: code })),
      groups: catalogue.groups.map(({ code, pick, items: members }) => ({ id: code, pick, items: members })),
      rules: rulesFor(catalogue, modelCode).map((rule) => asRule(rule, modelFacts)),
    };
    const against = checkPrerequisites(model, fitting, facts).findings.length;
    if (!best || against < best.against) best = { id, against };
  }
  return best?.id ?? null;
}
