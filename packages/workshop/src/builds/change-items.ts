import { z } from "zod";
import { ok, type Result } from "../core/result";
import { revision } from "../core/revision";
import { command, type PersonWork } from "../core/use-case";
import { itemCode, picked, quantity } from "./build-fields";
import { refuseBuild } from "./build-refusals";
import { excludedBecause, rivalsOf } from "./exclusion";
import type { Chosen } from "./ledger";
import { packageSelection } from "./package-selection";
import { notFitting } from "./prerequisite-model";
import { type ReadBuild, readCheckedBuild } from "./read-build-sheet";
import { setItems } from "./set-items";

/** What changed, so that it can be taken back: `undo` is the input of the opposite change. */
export type ItemsChanged = {
  readonly revision: number;
  readonly savedAt: string;
  readonly undo: {
    readonly set: readonly Chosen[];
    readonly remove: readonly string[];
    readonly packageCode: string | null;
  };
};

/** Adds, replaces and removes items and sets quantities, all in one step of the sheet. */
export const changeItems = command({
  name: "builds.change-items",
  permission: "builds:write",
  input: z.strictObject({
    buildId: z.uuid("Open the build again."),
    revision,
    set: z.array(z.strictObject({ code: itemCode, quantity })).max(100),
    remove: z.array(itemCode).max(100),
    /** Only for taking back the choice of a package. */
    packageCode: z.string().max(80).nullable().optional(),
  }),
  async run(work, { buildId, revision: seen, set, remove, packageCode }) {
    const sheet = await readCheckedBuild(work.tx, buildId, work.now);
    if (!sheet) return refuseBuild("build-not-found");
    if (sheet.revision !== seen) return refuseBuild("stale");
    const refusal = refusalOf(sheet, set, remove);
    if (refusal) return refusal;
    return store(work, sheet, seen, set, remove, packageCode === undefined ? sheet.packageCode : packageCode);
  },
});

/** Fills the sheet from a package; what was chosen beside it stays where it does not clash. */
export const choosePackage = command({
  name: "builds.choose-package",
  permission: "builds:write",
  input: z.strictObject({
    buildId: z.uuid("Open the build again."),
    revision,
    packageCode: z.string().max(80).nullable(),
    picked,
  }),
  async run(work, { buildId, revision: seen, packageCode, picked }) {
    const sheet = await readCheckedBuild(work.tx, buildId, work.now);
    if (!sheet) return refuseBuild("build-not-found");
    const selection = packageSelection(sheet.catalogue, packageCode, sheet.vehicle, picked);
    if (!selection.ok) return selection;
    const added = selection.value.filter((code) => !sheet.chosen.some((chosen) => chosen.code === code));
    return store(
      work,
      sheet,
      seen,
      added.map((code) => ({ code, quantity: 1 })),
      [],
      packageCode,
    );
  },
});

async function store(
  { tx, workshopId, now, audit }: PersonWork,
  sheet: ReadBuild,
  seen: number,
  set: readonly Chosen[],
  remove: readonly string[],
  packageCode: string | null,
): Promise<Result<ItemsChanged>> {
  const rivals = set.flatMap(({ code }) => rivalsOf(sheet.catalogue, code));
  const leaving = new Set([...remove, ...rivals].filter((code) => !set.some((each) => each.code === code)));
  const kept = sheet.chosen.filter(
    ({ code }) => !leaving.has(code) && !set.some((each) => each.code === code),
  );
  const { count } = await tx.build.updateMany({
    where: { id: sheet.id, revision: seen },
    data: { packageCode, updatedAt: now, revision: { increment: 1 } },
  });
  if (count === 0) return refuseBuild("stale");
  await setItems({ tx, workshopId }, sheet.id, sheet.catalogue, [...kept, ...set]);
  audit({
    entity: "build",
    entityId: sheet.id,
    before: { items: sheet.chosen, packageCode: sheet.packageCode },
    after: { items: [...kept, ...set], packageCode },
  });
  return ok({
    revision: seen + 1,
    savedAt: now.toISOString(),
    undo: {
      set: sheet.chosen.filter(({ code }) => leaving.has(code) || set.some((each) => each.code === code)),
      remove: set.map(({ code }) => code).filter((code) => !sheet.chosen.some((each) => each.code === code)),
      packageCode: sheet.packageCode,
    },
  });
}

/** Why an item cannot be set on this sheet: unknown, not made for the model, or excluded by a rule. */
function refusalOf(sheet: ReadBuild, set: readonly Chosen[], remove: readonly string[]) {
  const barred = new Set(notFitting(sheet.catalogue, sheet.vehicle.modelCode));
  for (const { code } of set) {
    const item = sheet.catalogue.items.find((each) => each.code === code);
    if (!item) return refuseBuild("item-unknown", { code });
    if (barred.has(code))
      return refuseBuild("item-does-not-fit", { item: item.name, model: sheet.vehicle.modelName });
    if (sheet.chosen.some((each) => each.code === code)) continue;
    const because = excludedBecause(sheet, code, remove);
    if (because) return refuseBuild("item-excluded", { item: item.name, because });
  }
  return null;
}
