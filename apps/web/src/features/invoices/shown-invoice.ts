import type { invoicesOfQuote, ValueOf } from "@buildproof/workshop";

/** An invoice or credit note as the quote's page lists it. */
export type ShownInvoice = ValueOf<typeof invoicesOfQuote>["invoices"][number];
