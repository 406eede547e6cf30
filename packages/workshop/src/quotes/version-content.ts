import type { Transaction } from "@buildproof/database";
import { isoDateOf } from "../core/site-date";
import { en } from "../messages/en";
import type { LineRow } from "./line-row";
import { type QuoteSite, quoteSite } from "./quote-site";
import { readPromise } from "./stored-promise";
import { readSelection } from "./stored-selection";
import { statusNow } from "./version-status";

/** Everything a version says to its reader; the page and the paper are drawn from it. */
export type VersionContent = NonNullable<Awaited<ReturnType<typeof versionContent>>>;

/** Null when this workshop has no such version. */
export async function versionContent(tx: Transaction, versionId: string, now: Date) {
  const row = await tx.quoteVersion.findUnique({
    where: { id: versionId },
    include: {
      lines: { orderBy: { position: "asc" } },
      acceptance: true,
      quote: {
        include: {
          customer: true,
          vehicle: { include: { vehicleModel: true } },
          build: { select: { packageCode: true } },
          versions: { select: { versionNo: true, status: true } },
          jobs: { select: { number: true } },
        },
      },
    },
  });
  if (!row) return null;
  const site = await quoteSite(tx);
  const selection = readSelection(row.selection);
  const { quote } = row;
  const packageCode = selection.packageCode ?? quote.build.packageCode;
  const bundle = packageCode ? await tx.package.findFirst({ where: { code: packageCode } }) : null;
  const { customer, vehicle } = quote;
  const newest = Math.max(0, ...quote.versions.filter(isOut).map(({ versionNo }) => versionNo));
  return {
    id: row.id,
    quoteId: row.quoteId,
    number: quote.number,
    versionNo: row.versionNo,
    status: statusNow(row, now, site.timeZone),
    validUntil: isoDateOf(row.validUntil),
    issuedAt: row.issuedAt,
    createdAt: row.createdAt,
    currency: site.currency,
    site: publicSite(site),
    customer: {
      name: customer.name,
      email: customer.email,
      phone: customer.phone,
      address: customer.address,
    },
    vehicle: {
      description: vehicle.vehicleModel.name,
      plate: vehicle.plate,
      vin: vehicle.vin,
      odometerKm: vehicle.odometerKm,
    },
    goal: row.goal,
    proposed: en.proposed({
      package_: bundle?.name ?? null,
      outcome: bundle?.outcome ?? null,
      vehicle: vehicle.vehicleModel.name,
    }),
    sections: sectionsOf(row.lines),
    totals: {
      discountMinor: Number(row.discountMinor),
      netMinor: Number(row.netMinor),
      taxMinor: Number(row.taxMinor),
      grossMinor: Number(row.grossMinor),
    },
    hours: {
      labour: row.labourHours.toString(),
      saved: row.savedHours.toString(),
      dyno: row.dynoHours.toString(),
    },
    deposit: depositOf(row, site),
    promise: readPromise(row.promise),
    partsBy: en.partsBy(selection.leadDays),
    inclusions: row.inclusions,
    exclusions: row.exclusions,
    assumptions: row.assumptions,
    cautions: row.cautions,
    note: row.note,
    /** The version that took its place, where one did. */
    supersededBy: newest > row.versionNo ? newest : null,
    acceptance: row.acceptance ? { name: row.acceptance.name, at: row.acceptance.at } : null,
    jobNumber: quote.jobs[0]?.number ?? null,
  };
}

/** What a reader may know of the site: not what an hour costs us. */
function publicSite(site: QuoteSite) {
  const { name, timeZone, jurisdiction, taxName, taxNumber, address, phone, email, discountLimitPct } = site;
  return { name, timeZone, jurisdiction, taxName, taxNumber, address, phone, email, discountLimitPct };
}

const isOut = ({ status }: { readonly status: string }) => status !== "draft";

/** Lines under the headings a reader looks for; hours of the workshop together, shared access work among them. */
function sectionsOf(rows: readonly LineRow[]) {
  const heads = en.headings;
  const headings = [heads.item, heads.labour, heads.dyno, heads.fee, heads.extra];
  return headings
    .map((heading) => {
      const lines = rows.filter((row) => headingOf(row.kind) === heading).map(readerLine);
      return { heading, lines, grossMinor: lines.reduce((sum, line) => sum + line.grossMinor, 0) };
    })
    .filter(({ lines }) => lines.length > 0);
}

function headingOf(kind: string): string {
  const { item, labour, dyno, fee, extra } = en.headings;
  const of: Readonly<Record<string, string>> = { item, operation: labour, access: labour, dyno, fee };
  return of[kind] ?? extra;
}

function readerLine(row: LineRow) {
  const quantity = row.quantity.toString();
  return {
    id: row.id,
    description: row.description,
    quantity: row.unit === "each" ? quantity : `${quantity} ${row.unit}`,
    discountPct: row.discountPct.toString(),
    grossMinor: Number(row.grossMinor),
  };
}

function depositOf(
  row: { readonly depositMinor: bigint; readonly nonReturnableMinor: bigint; readonly grossMinor: bigint },
  site: Pick<QuoteSite, "depositSharePct">,
) {
  const byParts = row.depositMinor > 0n && row.depositMinor === row.nonReturnableMinor;
  return {
    dueMinor: Number(row.depositMinor),
    covers: en.depositCovers({ byParts, sharePct: site.depositSharePct }),
  };
}
