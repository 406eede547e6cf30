import type { Transaction } from "@buildproof/database";

/** How the quotes of one package ended. */
export type QuoteOutcomes = {
  /** Null: work without a package. */
  readonly packageCode: string | null;
  readonly won: number;
  readonly lost: number;
  /** Still with the customer, and not lapsed: in neither count. */
  readonly open: number;
};

/** Quotes whose last issue falls since then, by package. A lapsed one is lost whether or not anybody marked it. */
export async function quoteOutcomes(
  tx: Transaction,
  { since, now, timeZone }: { readonly since: Date; readonly now: Date; readonly timeZone: string },
): Promise<readonly QuoteOutcomes[]> {
  const rows = await tx.$queryRaw<{ code: string | null; won: number; lost: number; open: number }[]>`
    with ended as (
      select q.id, b.package_code as code, max(v.issued_at) as issued_at,
        bool_or(v.status = 'accepted' or a.id is not null) as is_won,
        bool_or(v.status = 'issued'
          and v.valid_until >= (${now}::timestamptz at time zone ${timeZone})::date) as is_open
      from quote q join build b on b.id = q.build_id
        join quote_version v on v.quote_id = q.id and v.issued_at is not null
        left join acceptance a on a.version_id = v.id
      group by q.id, b.package_code
    )
    select code, count(*) filter (where is_won)::int as won,
      count(*) filter (where not is_won and is_open)::int as open,
      count(*) filter (where not is_won and not is_open)::int as lost
    from ended where issued_at >= ${since}::timestamptz group by code`;
  return rows.map(({ code, ...counts }) => ({ packageCode: code, ...counts }));
}

/** Won of decided, 0 to 1; null before any was decided. */
export function winRate({ won, lost }: Pick<QuoteOutcomes, "won" | "lost">): number | null {
  return won + lost === 0 ? null : won / (won + lost);
}
