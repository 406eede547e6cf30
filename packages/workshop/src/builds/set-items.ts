import { newId } from "../core/new-id";
import type { Work } from "../core/use-case";
import type { Catalogue } from "./catalogue-rows";
import { type Chosen, itemByCode } from "./ledger";

/** Writes which items a build has and how many of each, changing only what differs. */
export async function setItems(
  { tx, workshopId }: Pick<Work, "tx" | "workshopId">,
  buildId: string,
  catalogue: Catalogue,
  wanted: readonly Chosen[],
): Promise<void> {
  const present = await tx.buildItem.findMany({
    where: { buildId },
    include: { item: { select: { code: true } } },
  });
  const gone = present.filter(({ item }) => !wanted.some(({ code }) => code === item.code));
  if (gone.length > 0) await tx.buildItem.deleteMany({ where: { id: { in: gone.map(({ id }) => id) } } });

  let position = Math.max(0, ...present.map((row) => row.position));
  for (const { code, quantity } of wanted) {
    const row = present.find(({ item }) => item.code === code);
    if (row?.quantity === quantity) continue;
    if (row) {
      await tx.buildItem.update({ where: { id: row.id }, data: { quantity } });
      continue;
    }
    position += 1;
    const itemId = itemByCode(catalogue, code).id;
    await tx.buildItem.create({ data: { id: newId(), workshopId, buildId, itemId, quantity, position } });
  }
}
