import type { Transaction } from "@buildproof/database";
import { receivedOn } from "../quotes/deposit-status";

export type MoneyReceived = {
  /** Minor units of the version's currency: deposits and balances, less refunds. */
  readonly receivedMinor: bigint;
  readonly grossMinor: bigint;
  readonly depositMinor: bigint;
  readonly currency: string;
  readonly depositMet: boolean;
  readonly outstandingMinor: bigint;
};

/** What was paid on the quote of a job, against what its accepted version asks. */
export async function moneyReceived(
  tx: Transaction,
  quoteId: string,
  version: { readonly grossMinor: bigint; readonly depositMinor: bigint; readonly currency: string },
): Promise<MoneyReceived> {
  const receivedMinor = await receivedOn(tx, quoteId);
  const { grossMinor, depositMinor, currency } = version;
  const outstanding = grossMinor - receivedMinor;
  return {
    receivedMinor,
    grossMinor,
    depositMinor,
    currency,
    depositMet: receivedMinor >= depositMinor,
    outstandingMinor: outstanding > 0n ? outstanding : 0n,
  };
}
