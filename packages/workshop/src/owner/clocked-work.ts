import type { Transaction } from "@buildproof/database";
import { type MinorUnits, minorUnits } from "@buildproof/units";

/** One stretch of clocked work and what it cost. */
export type ClockedWork = {
  readonly id: string;
  readonly personName: string;
  readonly operation: string;
  readonly startedAt: Date;
  /** Null while the clock runs: it counts when it stops. */
  readonly stoppedAt: Date | null;
  readonly hours: number | null;
  readonly costMinor: MinorUnits | null;
  readonly kind: "labour" | "dyno";
  /** Why its end was set right afterwards; empty where it was not. */
  readonly correctedBecause: string;
};

type Row = Omit<ClockedWork, "costMinor" | "kind"> & { cost: bigint | null; isDyno: boolean };

/** The clock entries of a job in order of time, each with its cost rounded to the cent as the figures sum it. */
export async function clockedWork(tx: Transaction, jobId: string): Promise<readonly ClockedWork[]> {
  const rows = await tx.$queryRaw<Row[]>`
    with site as (select * from site order by name limit 1),
    known as (select code, name, rate from operation union select code, name, rate from access_work),
    clock as (
      select c.*, k.name as operation_name, coalesce(k.rate, '') = 'dyno' as is_dyno,
        extract(epoch from c.stopped_at - c.started_at) as seconds
      from clock_entry c left join known k on k.code = c.operation_code
      where c.job_id = ${jobId}::uuid
    )
    select c.id, p.name as "personName", coalesce(c.operation_name, c.operation_code) as operation,
      c.started_at as "startedAt", c.stopped_at as "stoppedAt", (c.seconds / 3600)::float8 as hours,
      round(c.seconds * case when c.is_dyno then s.dyno_cost_minor_per_hour else s.labour_cost_minor_per_hour end
        / 3600)::bigint as cost,
      c.is_dyno as "isDyno", c.corrected_because as "correctedBecause"
    from clock c cross join site s join person p on p.id = c.person_id
    order by c.started_at, c.id`;
  return rows.map(({ cost, isDyno, ...row }) => ({
    ...row,
    costMinor: cost === null ? null : minorUnits(cost),
    kind: isDyno ? "dyno" : "labour",
  }));
}
