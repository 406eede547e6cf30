import type { QuoteDocument } from "@buildproof/documents";
import { addressLines, letterHead } from "../core/letter-head";
import { dateInZone } from "../core/site-date";
import { en } from "../messages/en";
import { dayInWords } from "./day-in-words";
import type { VersionContent } from "./version-content";

/** A version as the paper that the customer keeps. */
export function quoteDocument(version: VersionContent): QuoteDocument {
  const { site, customer, vehicle, promise, totals } = version;
  const madeAt = version.issuedAt ?? version.createdAt;
  const notice = noticeOf(version);
  return {
    workshop: letterHead(site),
    customer: {
      name: customer.name,
      ...(customer.address ? { address: addressLines(customer.address) } : {}),
      ...(customer.email ? { email: customer.email } : {}),
      ...(customer.phone ? { phone: customer.phone } : {}),
    },
    vehicle: {
      description: vehicle.description,
      plate: vehicle.plate,
      vin: vehicle.vin,
      odometerKm: vehicle.odometerKm,
    },
    number: String(version.number),
    version: version.versionNo,
    issuedOn: dateInZone(madeAt, site.timeZone),
    issuedAt: madeAt.toISOString(),
    validUntil: version.validUntil,
    currency: version.currency,
    taxName: site.taxName,
    asked: version.goal,
    proposed: [version.proposed, version.note].filter((part) => part !== "").join(" "),
    sections: version.sections.map(({ heading, lines }) => ({
      heading,
      lines: lines.map(({ description, quantity, grossMinor, discountPct }) => ({
        description,
        quantity,
        grossMinor,
        ...(discountPct === "0" ? {} : { detail: en.lessDiscount(discountPct) }),
      })),
    })),
    discountMinor: totals.discountMinor,
    netMinor: totals.netMinor,
    taxMinor: totals.taxMinor,
    grossMinor: totals.grossMinor,
    deposit: { grossMinor: version.deposit.dueMinor, covers: version.deposit.covers },
    ...(promise ? { promise } : {}),
    earliest: version.partsBy,
    assumptions: version.assumptions,
    exclusions: version.exclusions,
    cautions: version.cautions,
    acceptance: [en.accept],
    ...(notice ? { notice } : {}),
  };
}

function noticeOf(version: VersionContent): string | null {
  const { status, acceptance, supersededBy, site } = version;
  switch (status) {
    case "issued":
      return null;
    case "accepted":
      return acceptance
        ? en.notice.accepted({
            name: acceptance.name,
            on: dayInWords(dateInZone(acceptance.at, site.timeZone)),
          })
        : null;
    case "superseded":
      return en.notice.superseded(supersededBy);
    default:
      return en.notice[status];
  }
}
