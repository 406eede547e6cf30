import { z } from "zod";
import { asJson } from "../core/audit";
import { newId } from "../core/new-id";
import { nextNumber } from "../core/next-number";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { refuseBuild } from "./build-refusals";

/** A second build of the same vehicle with the same choices, to try another way beside the first. */
export const copyBuild = command({
  name: "builds.copy",
  permission: "builds:write",
  input: z.strictObject({ buildId: z.uuid("Open the build again.") }),
  async run({ tx, workshopId, now, audit }, { buildId }) {
    const from = await tx.build.findUnique({ where: { id: buildId }, include: { items: true } });
    if (!from) return refuseBuild("build-not-found");
    const id = newId();
    const number = await nextNumber(tx, workshopId, "build");
    const { customerId, vehicleId, goal, wantedBy, packageCode } = from;
    const assumptions = asJson(from.assumptions) as object; // A JSON object, as the schema's default makes it.
    const build = { customerId, vehicleId, goal, wantedBy, packageCode, assumptions };
    await tx.build.create({ data: { id, workshopId, number, ...build, createdAt: now, updatedAt: now } });
    await tx.buildItem.createMany({
      data: from.items.map(({ itemId, quantity, position }) => ({
        id: newId(),
        workshopId,
        buildId: id,
        itemId,
        quantity,
        position,
      })),
    });
    audit({ entity: "build", entityId: id, after: { number, copyOf: from.number } });
    return ok({ id, number, copyOf: { id: from.id, number: from.number } });
  },
});
