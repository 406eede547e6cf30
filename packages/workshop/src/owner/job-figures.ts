import type { Transaction } from "@buildproof/database";
import { type MinorUnits, minorUnits } from "@buildproof/units";
import { type ByKind, byKind } from "./cost-kind";

/** What one job was quoted at and what it cost, each kind a sum of amounts rounded to the cent one by one. */
export type JobFigures = {
  readonly jobId: string;
  readonly number: number;
  readonly packageCode: string | null;
  readonly packageName: string | null;
  readonly status: string;
  readonly customerName: string;
  readonly plate: string;
  readonly modelName: string;
  readonly handedOverAt: Date | null;
  /** Quarter of the hand-over on the site's calendar: "2026 Q3". */
  readonly quarter: string | null;
  readonly sellMinor: MinorUnits;
  readonly quotedMinor: ByKind<MinorUnits>;
  readonly actualMinor: ByKind<MinorUnits>;
  readonly quotedLabourHours: number;
  readonly clockedHours: number;
  readonly quotedDynoHours: number;
  /** Dyno hours that the job was charged with, by its recorded dyno cost and by the clock on dyno operations. */
  readonly dynoHours: number;
};

type Chosen =
  | { readonly jobId: string }
  /** Jobs handed over since then; of one package, or of none ("") when given. */
  | { readonly since: Date; readonly packageCode?: string };

type Row = {
  job_id: string;
  number: number;
  package_code: string | null;
  package_name: string | null;
  status: string;
  customer_name: string;
  plate: string;
  model_name: string;
  handed_over_at: Date | null;
  quarter: string | null;
  sell: bigint;
  quoted_parts: bigint;
  quoted_labour: bigint;
  quoted_bought_in: bigint;
  quoted_dyno: bigint;
  parts: bigint;
  labour: bigint;
  bought_in: bigint;
  dyno: bigint;
  rework: bigint;
  other: bigint;
  quoted_labour_hours: number;
  clocked_hours: number;
  quoted_dyno_hours: number;
  dyno_hours: number;
};

/**
 * The figures of the chosen jobs, newest hand-over first, in one question to the database.
 *
 * Quoted: quantity × cost of each line of the accepted version; an item whose kind is bought-in counts there,
 * every other item and fee is parts. Actual: each stopped clock entry at the site's cost of an hour (of a dyno
 * hour on a dyno operation), and what was recorded. A clock that still runs counts when it stops.
 */
export async function jobFigures(tx: Transaction, chosen: Chosen): Promise<readonly JobFigures[]> {
  const jobId = "jobId" in chosen ? chosen.jobId : null;
  const since = "since" in chosen ? chosen.since : null;
  const code = ("packageCode" in chosen ? chosen.packageCode : null) ?? null;
  const rows = await tx.$queryRaw<Row[]>`
    with site as (select * from site order by name limit 1),
    chosen as (
      select j.*, h.at as handed_over_at from job j left join hand_over h on h.job_id = j.id
      where (${jobId}::uuid is null or j.id = ${jobId}::uuid)
        and (${since}::timestamptz is null or (j.status = 'handed_over' and h.at >= ${since}::timestamptz))
        and (${code}::text is null or coalesce(j.package_code, '') = ${code}::text)
    ),
    line as (
      select l.version_id, l.kind, l.quantity, round(l.quantity * l.unit_cost_minor) as cost,
        coalesce(i.kind = 'bought-in', false) and l.kind in ('item', 'fee') as is_bought_in
      from quote_line l left join item i on i.workshop_id = l.workshop_id and i.code = l.code
      where l.version_id in (select version_id from chosen)
    ),
    quoted as (
      select version_id,
        sum(cost) filter (where kind in ('operation', 'access')) as labour,
        sum(cost) filter (where kind = 'dyno') as dyno,
        sum(cost) filter (where is_bought_in) as bought_in,
        sum(cost) filter (where kind not in ('operation', 'access', 'dyno') and not is_bought_in) as parts,
        sum(quantity) filter (where kind in ('operation', 'access')) as labour_hours,
        sum(quantity) filter (where kind = 'dyno') as dyno_hours
      from line group by version_id
    ),
    dyno_work as (
      select code from operation where rate = 'dyno' union select code from access_work where rate = 'dyno'
    ),
    clock as (
      select c.job_id, extract(epoch from c.stopped_at - c.started_at) as seconds,
        c.operation_code in (select code from dyno_work) as is_dyno
      from clock_entry c where c.stopped_at is not null and c.job_id in (select id from chosen)
    ),
    clocked as (
      select job_id,
        sum(round(seconds * s.labour_cost_minor_per_hour / 3600)) filter (where not is_dyno) as labour,
        sum(round(seconds * s.dyno_cost_minor_per_hour / 3600)) filter (where is_dyno) as dyno,
        sum(seconds) filter (where not is_dyno) / 3600 as labour_hours,
        sum(seconds) filter (where is_dyno) / 3600 as dyno_hours
      from clock, site s group by job_id
    ),
    cost as (
      select job_id,
        sum(amount_minor) filter (where kind = 'parts') as parts,
        sum(amount_minor) filter (where kind = 'boughtIn') as bought_in,
        sum(amount_minor) filter (where kind = 'dyno') as dyno,
        sum(amount_minor) filter (where kind = 'rework') as rework,
        sum(amount_minor) filter (where kind not in ('parts', 'boughtIn', 'dyno', 'rework')) as other
      from job_cost where job_id in (select id from chosen) group by job_id
    )
    select j.id as job_id, j.number, j.package_code, p.name as package_name, j.status::text as status,
      c.name as customer_name, v.plate, m.name as model_name, j.handed_over_at,
      to_char(j.handed_over_at at time zone s.time_zone, 'YYYY "Q"Q') as quarter,
      q.net_minor as sell,
      coalesce(l.parts, 0)::bigint as quoted_parts, coalesce(l.labour, 0)::bigint as quoted_labour,
      coalesce(l.bought_in, 0)::bigint as quoted_bought_in, coalesce(l.dyno, 0)::bigint as quoted_dyno,
      coalesce(cost.parts, 0)::bigint as parts, coalesce(k.labour, 0)::bigint as labour,
      coalesce(cost.bought_in, 0)::bigint as bought_in,
      (coalesce(cost.dyno, 0) + coalesce(k.dyno, 0))::bigint as dyno,
      coalesce(cost.rework, 0)::bigint as rework, coalesce(cost.other, 0)::bigint as other,
      coalesce(l.labour_hours, 0)::float8 as quoted_labour_hours,
      coalesce(k.labour_hours, 0)::float8 as clocked_hours,
      coalesce(l.dyno_hours, 0)::float8 as quoted_dyno_hours,
      (coalesce(cost.dyno / nullif(s.dyno_cost_minor_per_hour, 0)::numeric, 0)
        + coalesce(k.dyno_hours, 0))::float8 as dyno_hours
    from chosen j
      cross join site s
      join quote_version q on q.id = j.version_id
      join customer c on c.id = j.customer_id
      join vehicle v on v.id = j.vehicle_id
      join vehicle_model m on m.id = v.vehicle_model_id
      left join package p on p.workshop_id = j.workshop_id and p.code = j.package_code
      left join quoted l on l.version_id = j.version_id
      left join clocked k on k.job_id = j.id
      left join cost on cost.job_id = j.id
    order by j.handed_over_at desc nulls first, j.number desc`;
  return rows.map(figuresOf);
}

function figuresOf(row: Row): JobFigures {
  const quoted = {
    parts: row.quoted_parts,
    labour: row.quoted_labour,
    boughtIn: row.quoted_bought_in,
    dyno: row.quoted_dyno,
    rework: 0n,
    other: 0n,
  };
  const actual = {
    parts: row.parts,
    labour: row.labour,
    boughtIn: row.bought_in,
    dyno: row.dyno,
    rework: row.rework,
    other: row.other,
  };
  return {
    jobId: row.job_id,
    number: row.number,
    packageCode: row.package_code,
    packageName: row.package_name,
    status: row.status,
    customerName: row.customer_name,
    plate: row.plate,
    modelName: row.model_name,
    handedOverAt: row.handed_over_at,
    quarter: row.quarter,
    sellMinor: minorUnits(row.sell),
    quotedMinor: byKind((kind) => minorUnits(quoted[kind])),
    actualMinor: byKind((kind) => minorUnits(actual[kind])),
    quotedLabourHours: row.quoted_labour_hours,
    clockedHours: row.clocked_hours,
    quotedDynoHours: row.quoted_dyno_hours,
    dynoHours: row.dyno_hours,
  };
}
