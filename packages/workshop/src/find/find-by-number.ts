import type { Transaction } from "@buildproof/database";
import { MOST_HITS } from "./find-by-text";
import type { Found } from "./found";
import { likeLiteral, type Typed } from "./what-is-typed";

type Row = {
  readonly id: string;
  readonly number: number;
  readonly owner: string;
  readonly plate: string;
  readonly about: string;
};

const found =
  (word: string) =>
  (row: Row): Found => ({
    id: row.id,
    title: `${word} ${row.number}`,
    detail: [row.owner, row.plate, row.about].filter((part) => part !== "").join(" · "),
  });

/** Numbers that begin with what was typed, the exact one first. */
const begins = (typed: Typed) => `${likeLiteral(typed.number ?? "")}%`;

export async function findBuilds(tx: Transaction, typed: Typed): Promise<readonly Found[]> {
  const rows = await tx.$queryRaw<Row[]>`
    select b.id, b.number, c.name as owner, v.plate, b.goal as about
    from build b join customer c on c.id = b.customer_id join vehicle v on v.id = b.vehicle_id
    where (${typed.number}::text is not null and b.number::text like ${begins(typed)})
      or lower(c.name) like ${typed.pattern}
    order by b.number::text = ${typed.number ?? ""} desc, b.updated_at desc
    limit ${MOST_HITS}`;
  return rows.map(found("Build"));
}

export async function findQuotes(tx: Transaction, typed: Typed): Promise<readonly Found[]> {
  const rows = await tx.$queryRaw<Row[]>`
    select q.id, q.number, c.name as owner, v.plate, '' as about
    from quote q join customer c on c.id = q.customer_id join vehicle v on v.id = q.vehicle_id
    where (${typed.number}::text is not null and q.number::text like ${begins(typed)})
      or lower(c.name) like ${typed.pattern}
    order by q.number::text = ${typed.number ?? ""} desc, q.number desc
    limit ${MOST_HITS}`;
  return rows.map(found("Quote"));
}

export async function findJobs(tx: Transaction, typed: Typed): Promise<readonly Found[]> {
  const rows = await tx.$queryRaw<Row[]>`
    select j.id, j.number, c.name as owner, v.plate, replace(j.status::text, '_', ' ') as about
    from job j join customer c on c.id = j.customer_id join vehicle v on v.id = j.vehicle_id
    where (${typed.number}::text is not null and j.number::text like ${begins(typed)})
      or lower(c.name) like ${typed.pattern}
    order by j.number::text = ${typed.number ?? ""} desc, j.number desc
    limit ${MOST_HITS}`;
  return rows.map(found("Job"));
}
