import type { TaxCategory } from "@buildproof/pricing";

export const lineKinds = ["item", "operation", "access", "dyno", "fee", "extra"] as const;
export type LineKind = (typeof lineKinds)[number];

/** A line as it is chosen, before totals: money is in minor units without tax. */
export type DraftLine = {
  readonly kind: LineKind;
  /** What it stands for across versions: the code of the item, operation or access work, or its own. */
  readonly code: string;
  readonly description: string;
  /** As a decimal, exactly: "1", "11.5". */
  readonly quantity: string;
  readonly unit: string;
  readonly unitPriceMinor: bigint;
  readonly unitCostMinor: bigint;
  readonly discountPct: string;
  readonly taxCategory: TaxCategory;
};

/** A line with its row's own id and place; a new one has no row yet. */
export type DraftRow = DraftLine & { readonly id: string; readonly position: number };
