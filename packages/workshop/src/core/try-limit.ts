import type { Transaction } from "@buildproof/database";

/** So many tries by one caller in so long a stretch of time, which begins with the first. */
export type TryLimit = { readonly of: string; readonly tries: number; readonly seconds: number };

/**
 * Counts one try, in the database, so that a restart or a second process does not forget it.
 * @returns the seconds until the caller may try again when this one was beyond the limit, else null
 */
export async function countTry(
  tx: Transaction,
  limit: TryLimit,
  caller: string,
  now: Date,
): Promise<number | null> {
  const rows = await tx.$queryRaw<{ tries: number; ends_at: Date }[]>`
    select * from count_try(${keyOf(limit, caller)}, ${limit.seconds}::integer, ${now}::timestamptz)`;
  const counted = rows[0];
  if (!counted || counted.tries <= limit.tries) return null;
  return Math.max(1, Math.ceil((counted.ends_at.getTime() - now.getTime()) / 1000));
}

/** Whether a caller has no try left, without counting one. */
export async function triesAreSpent(
  tx: Transaction,
  limit: TryLimit,
  caller: string,
  now: Date,
): Promise<boolean> {
  const rows = await tx.$queryRaw<{ tries: number }[]>`
    select tries_counted(${keyOf(limit, caller)}, ${now}::timestamptz) as tries`;
  return (rows[0]?.tries ?? 0) >= limit.tries;
}

function keyOf(limit: TryLimit, caller: string): string {
  return `${limit.of} ${caller}`;
}
