import type { Transaction } from "@buildproof/database";
import { newId } from "./new-id";

/** The next human number of a series. The counter's row stays locked until the transaction ends. */
export async function nextNumber(
  tx: Transaction,
  workshopId: string,
  series: "build" | "quote" | "job" | "catalogue" | "invoice",
): Promise<number> {
  const first = series === "catalogue" ? 1 : 1001;
  const rows = await tx.$queryRaw<{ taken: number }[]>`
    insert into counter (id, workshop_id, series, next) values (${newId()}::uuid, ${workshopId}::uuid, ${series}, ${first + 1})
    on conflict (workshop_id, series) do update set next = counter.next + 1
    returning next - 1 as taken`;
  const taken = rows[0]?.taken;
  if (taken === undefined) throw new Error(`no counter for ${series}`);
  return taken;
}
