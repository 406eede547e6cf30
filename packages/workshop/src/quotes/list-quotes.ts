import { z } from "zod";
import { ok } from "../core/result";
import { dateInZone } from "../core/site-date";
import { query } from "../core/use-case";
import { quoteSite } from "./quote-site";
import { type QuoteStatus, quoteStatuses } from "./version-status";

const PAGE = 40;

type Row = {
  readonly id: string;
  readonly number: number;
  readonly customer: string;
  readonly vehicle: string;
  readonly plate: string;
  readonly version_no: number;
  readonly status: QuoteStatus;
  readonly valid_until: string;
  readonly gross_minor: bigint;
  readonly draft_no: number | null;
  readonly declined_because: string;
};

/**
 * Quotes, newest first, each by the version that is in force (else its newest), as of today: an issued version past
 * its last day is lapsed. Searched by number, customer, vehicle and plate.
 */
export const listQuotes = query({
  name: "quotes.list",
  permission: "quotes:read",
  input: z.strictObject({
    status: z.enum(quoteStatuses).optional(),
    search: z.string().trim().max(100).default(""),
    page: z.number().int().min(1).max(10_000).default(1),
  }),
  async run({ tx, now }, { status, search, page }) {
    const { timeZone, currency } = await quoteSite(tx);
    const today = dateInZone(now, timeZone);
    const wanted = status ?? "";
    const pattern = `%${search.toLowerCase().replace(/[%_\\]/g, "\\$&")}%`;
    const compact = `%${search.toLowerCase().replace(/[^a-z0-9]/g, "")}%`;
    const rows = await tx.$queryRaw<Row[]>`
      with listed as (
        select q.id, q.number, c.name as customer, m.name as vehicle, v.plate, w.version_no,
          case when w.status = 'issued' and w.valid_until < ${today}::date then 'lapsed' else w.status::text end as status,
          w.valid_until::text, w.gross_minor, w.declined_because,
          (select d.version_no from quote_version d
            where d.quote_id = q.id and d.status = 'draft' and d.id <> w.id) as draft_no
        from quote q
        join customer c on c.id = q.customer_id
        join vehicle v on v.id = q.vehicle_id
        join vehicle_model m on m.id = v.vehicle_model_id
        join lateral (
          select * from quote_version x where x.quote_id = q.id
          order by (x.status in ('issued', 'accepted')) desc, x.version_no desc limit 1
        ) w on true
      )
      select * from listed
      where (${wanted} = '' or status = ${wanted})
        and (${search} = '' or number::text like ${pattern} or lower(customer) like ${pattern}
          or lower(vehicle) like ${pattern}
          or (${compact} <> '%%' and replace(replace(lower(plate), ' ', ''), '-', '') like ${compact}))
      order by number desc
      limit ${PAGE + 1} offset ${(page - 1) * PAGE}`;
    return ok({
      currency,
      today,
      page,
      hasMore: rows.length > PAGE,
      quotes: rows.slice(0, PAGE).map((row) => ({
        id: row.id,
        number: row.number,
        customer: row.customer,
        vehicle: row.vehicle,
        plate: row.plate,
        versionNo: row.version_no,
        status: row.status,
        validUntil: row.valid_until,
        grossMinor: Number(row.gross_minor),
        draftNo: row.draft_no,
        declinedBecause: row.declined_because,
      })),
    });
  },
});
