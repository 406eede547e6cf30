import type { Transaction } from "@buildproof/database";

/** The zone in whose clock the dyno page tells its times. */
export async function siteClock(tx: Transaction): Promise<{ readonly timeZone: string }> {
  const { timeZone } = await tx.site.findFirstOrThrow({
    orderBy: { name: "asc" },
    select: { timeZone: true },
  });
  return { timeZone };
}
