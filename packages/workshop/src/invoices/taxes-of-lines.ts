import type { InvoiceContent, InvoiceLine } from "./invoice-content";

/** The sums of lines by category and rate, in the order in which they come. */
export function taxesOfLines(lines: readonly InvoiceLine[]): InvoiceContent["taxes"] {
  const taxes = new Map<string, InvoiceContent["taxes"][number]>();
  for (const { taxCategory, ratePct, netMinor, taxMinor } of lines) {
    const key = `${taxCategory} ${ratePct}`;
    const sum = taxes.get(key) ?? { taxCategory, ratePct, netMinor: 0, taxMinor: 0 };
    taxes.set(key, { ...sum, netMinor: sum.netMinor + netMinor, taxMinor: sum.taxMinor + taxMinor });
  }
  return [...taxes.values()];
}

/** What lines come to, in minor units. */
export function sumOfLines(lines: readonly Pick<InvoiceLine, "netMinor" | "taxMinor" | "grossMinor">[]) {
  return lines.reduce(
    (sum, { netMinor, taxMinor, grossMinor }) => ({
      netMinor: sum.netMinor + netMinor,
      taxMinor: sum.taxMinor + taxMinor,
      grossMinor: sum.grossMinor + grossMinor,
    }),
    { netMinor: 0, taxMinor: 0, grossMinor: 0 },
  );
}
