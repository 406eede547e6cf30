import type { Transaction } from "@buildproof/database";

/** Hours of one operation or piece of access work over some jobs. */
export type OperationHours = {
  readonly code: string;
  readonly name: string;
  readonly quotedHours: number;
  readonly clockedHours: number;
};

/** Quoted against clocked, what ran over furthest first. `rate` says which hours: of the workshop or of the dyno. */
export function operationHours(
  tx: Transaction,
  jobIds: readonly string[],
  rate: "workshop" | "dyno",
): Promise<readonly OperationHours[]> {
  return tx.$queryRaw<OperationHours[]>`
    with known as (
      select code, name, rate from operation union select code, name, rate from access_work
    ),
    quoted as (
      select l.code, max(l.description) as name, sum(l.quantity) as hours
      from quote_line l join job j on j.version_id = l.version_id
      where j.id = any(${jobIds}::uuid[]) and l.kind in ('operation', 'access', 'dyno')
        and (l.kind = 'dyno') = (${rate} = 'dyno')
      group by l.code
    ),
    clocked as (
      select c.operation_code as code, sum(extract(epoch from c.stopped_at - c.started_at)) / 3600 as hours
      from clock_entry c left join known k on k.code = c.operation_code
      where c.job_id = any(${jobIds}::uuid[]) and c.stopped_at is not null
        and (coalesce(k.rate, 'workshop') = 'dyno') = (${rate} = 'dyno')
      group by c.operation_code
    )
    select code, coalesce(k.name, q.name, code) as name,
      coalesce(q.hours, 0)::float8 as "quotedHours", coalesce(c.hours, 0)::float8 as "clockedHours"
    from quoted q full join clocked c using (code) left join known k using (code)
    order by coalesce(c.hours, 0) - coalesce(q.hours, 0) desc, code`;
}
