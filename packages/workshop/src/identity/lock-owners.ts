import type { Transaction } from "@buildproof/database";

/**
 * How many active owners there are beside this person. Their rows stay locked until the transaction ends, so
 * that two owners cannot take each other away at the same moment.
 */
export async function lockOtherOwners(tx: Transaction, personId: string): Promise<number> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    select id from person where active and 'owner' = any(roles) order by id for update`;
  return rows.filter(({ id }) => id !== personId).length;
}
