import type { Transaction } from "@buildproof/database";

/** Deposits that are here for work not invoiced yet: money of customers, not earned. */
type HeldDeposits = {
  readonly quotes: number;
  readonly securityMinor: number;
  readonly partMinor: number;
};

/** What goes back counts against the deposits of the same quote, the security first. */
export async function heldDeposits(tx: Transaction): Promise<HeldDeposits> {
  const rows = await tx.$queryRaw<{ security: bigint; part: bigint; refunded: bigint }[]>`
    select coalesce(sum(amount_minor) filter (where held_as = 'security'), 0)::bigint as security,
      coalesce(sum(amount_minor) filter (where held_as = 'part'), 0)::bigint as part,
      coalesce(sum(amount_minor) filter (where kind = 'refund'), 0)::bigint as refunded
    from payment p
    where not exists (
      select from invoice i where i.quote_id = p.quote_id and i.kind = 'invoice'
        and i.gross_minor > coalesce((select sum(c.gross_minor) from invoice c where c.credits_id = i.id), 0)
    ) and not exists (select from job j where j.quote_id = p.quote_id and j.status = 'handed_over')
    group by p.quote_id`;
  return rows.reduce<HeldDeposits>(
    (sum, row) => {
      const [security, part, refunded] = [Number(row.security), Number(row.part), Number(row.refunded)];
      const fromSecurity = Math.min(refunded, security);
      const left = {
        security: security - fromSecurity,
        part: Math.max(0, part - (refunded - fromSecurity)),
      };
      return {
        quotes: sum.quotes + (left.security + left.part > 0 ? 1 : 0),
        securityMinor: sum.securityMinor + left.security,
        partMinor: sum.partMinor + left.part,
      };
    },
    { quotes: 0, securityMinor: 0, partMinor: 0 },
  );
}
