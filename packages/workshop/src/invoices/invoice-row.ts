import type { Transaction } from "@buildproof/database";

export type InvoiceRow = Awaited<ReturnType<Transaction["invoice"]["findFirstOrThrow"]>>;
