import { z } from "zod";
import { atField } from "../core/at-field";
import { newId } from "../core/new-id";
import { nextNumber } from "../core/next-number";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { dateInZone, storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { goal, itemCode, picked, wantedBy } from "./build-fields";
import { refuseBuild } from "./build-refusals";
import { fuelDuty } from "./fuel-duty";
import { itemByCode } from "./ledger";
import { packageSelection } from "./package-selection";
import { notFitting } from "./prerequisite-model";
import { readCatalogue } from "./read-catalogue";
import { setItems } from "./set-items";

/** Starts a build for a vehicle: what its owner wants, by when, from a package or from nothing. */
export const startBuild = command({
  name: "builds.start",
  permission: "builds:write",
  input: z.strictObject({
    vehicleId: z.uuid("Choose the vehicle first."),
    goal,
    wantedBy,
    packageCode: z.string().max(80).nullable(),
    picked,
    /** Chosen from the start beside the package: what a way to a goal or a past build consists of. */
    items: z.array(itemCode).max(200).default([]),
  }),
  async run({ tx, workshopId, now, audit }, input) {
    const vehicle = await tx.vehicle.findUnique({
      where: { id: input.vehicleId },
      include: { vehicleModel: true },
    });
    if (!vehicle) return refuseBuild("vehicle-not-found");
    const site = await readSite(tx);
    const today = dateInZone(now, site.timeZone);
    if (input.wantedBy && input.wantedBy < today)
      return atField("wantedBy", refuseBuild("wanted-by-past", { today }));

    const catalogue = await readCatalogue(tx);
    const { code: modelCode, name: modelName } = vehicle.vehicleModel;
    const selection = packageSelection(catalogue, input.packageCode, { modelCode, modelName }, input.picked);
    if (!selection.ok) return selection;

    const unknown = input.items.find((code) => !catalogue.items.some((item) => item.code === code));
    if (unknown !== undefined) return refuseBuild("item-unknown", { code: unknown });
    const barred = new Set(notFitting(catalogue, modelCode));
    const stray = input.items.find((code) => barred.has(code));
    if (stray !== undefined)
      return refuseBuild("item-does-not-fit", { item: itemByCode(catalogue, stray).name, model: modelName });

    const id = newId();
    const number = await nextNumber(tx, workshopId, "build");
    const build = {
      customerId: vehicle.customerId,
      vehicleId: vehicle.id,
      goal: input.goal,
      packageCode: input.packageCode,
    };
    await tx.build.create({
      data: {
        id,
        workshopId,
        number,
        ...build,
        wantedBy: input.wantedBy ? storedDate(input.wantedBy) : null,
        createdAt: now,
        updatedAt: now,
      },
    });
    const codes = [
      ...new Set([...selection.value, ...input.items, ...fuelDuty(catalogue, vehicle.fuelKind, modelCode)]),
    ];
    await setItems(
      { tx, workshopId },
      id,
      catalogue,
      codes.map((code) => ({ code, quantity: 1 })),
    );
    audit({
      entity: "build",
      entityId: id,
      after: { number, ...build, wantedBy: input.wantedBy, items: codes },
    });
    return ok({ id, number });
  },
});
