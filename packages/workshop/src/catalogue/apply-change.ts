import type { Transaction } from "@buildproof/database";
import { asJson } from "../core/audit";
import { newId } from "../core/new-id";
import type { ContentOf, PartChange } from "./part-content";

/**
 * Makes one published change in the catalogue that is sold from. An item that is gone is kept as retired, because
 * builds and jobs point at it; every other part is named by its code only and goes.
 */
export async function applyChange(tx: Transaction, workshopId: string, change: PartChange): Promise<void> {
  const { code } = change;
  const key = { workshopId_code: { workshopId, code } };
  const made = { id: newId(), workshopId, code };
  switch (change.part) {
    case "item": {
      if (!change.after) {
        await tx.item.update({ where: key, data: { retired: true } });
        return;
      }
      const data = { ...itemRow(change.after), retired: false };
      await tx.item.upsert({ where: key, update: data, create: { ...made, ...data } });
      return;
    }
    case "group": {
      if (!change.after) return void (await tx.itemGroup.delete({ where: key }));
      const data = groupRow(change.after);
      await tx.itemGroup.upsert({ where: key, update: data, create: { ...made, ...data } });
      return;
    }
    case "rule": {
      // A rule that changes its kind leaves no figure of the old kind behind: the row is written anew.
      await tx.rule.deleteMany({ where: { code } });
      if (change.after) await tx.rule.create({ data: { ...made, ...ruleRow(change.after) } });
      return;
    }
    case "package": {
      await tx.package.deleteMany({ where: { code } });
      if (change.after) await tx.package.create({ data: { ...made, ...packageRow(change.after) } });
      return;
    }
    case "operation": {
      if (!change.after) {
        await tx.procedureStep.deleteMany({ where: { operation: { code } } });
        return void (await tx.operation.delete({ where: key }));
      }
      const data = { ...change.after };
      await tx.operation.upsert({ where: key, update: data, create: { ...made, ...data } });
      return;
    }
    case "access": {
      if (!change.after) return void (await tx.accessWork.delete({ where: key }));
      const data = { ...change.after };
      await tx.accessWork.upsert({
        where: key,
        update: data,
        create: { ...made, ...data, steps: { out: [], back: [] } },
      });
    }
  }
}

/** Makes items that no row of any time is there for, many at a time: a price list brings thousands. */
export async function makeItems(
  tx: Transaction,
  workshopId: string,
  changes: readonly PartChange[],
): Promise<void> {
  const rows = changes.flatMap(({ part, code, after }) =>
    part === "item" && after ? [{ id: newId(), workshopId, code, ...itemRow(after) }] : [],
  );
  const most = 1_000;
  for (let at = 0; at < rows.length; at += most)
    await tx.item.createMany({ data: rows.slice(at, at + most) });
}

function itemRow({ priceMinor, costMinor, figures, ...rest }: ContentOf<"item">) {
  return {
    ...rest,
    figures: asJson(figures),
    priceMinor: BigInt(priceMinor),
    costMinor: BigInt(costMinor),
  };
}

const pickRows = {
  "at-most-one": "atMostOne",
  "exactly-one": "exactlyOne",
  "at-least-one": "atLeastOne",
} as const;

function groupRow({ pick, ...rest }: ContentOf<"group">) {
  return { ...rest, pick: pickRows[pick] };
}

function ruleRow(rule: ContentOf<"rule">) {
  if (rule.kind === "capacity") return { ...rule, supply: asJson(rule.supply), demand: asJson(rule.demand) };
  const { when, then, ...head } = rule;
  // biome-ignore lint/suspicious/noThenProperty: the condition language of the rules has this word.
  return { ...head, ...(when ? { when: asJson(when) } : {}), then: asJson(then) };
}

function packageRow({ choices, promise, ...rest }: ContentOf<"package">) {
  return { ...rest, choices: asJson(choices), ...(promise ? { promise: asJson(promise) } : {}) };
}
