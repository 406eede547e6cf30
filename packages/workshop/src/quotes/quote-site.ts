import type { Transaction } from "@buildproof/database";
import { type Jurisdiction, jurisdictions } from "@buildproof/pricing";
import { type CurrencyCode, isCurrencyCode } from "@buildproof/units";

/** Where a quote is made: its clock, its money, its tax, its rates. */
export type QuoteSite = {
  readonly name: string;
  readonly timeZone: string;
  readonly currency: CurrencyCode;
  readonly jurisdiction: Jurisdiction;
  readonly taxName: string;
  readonly taxNumber: string;
  readonly address: string;
  readonly phone: string;
  readonly email: string;
  readonly labourRateMinorPerHour: bigint;
  readonly labourCostMinorPerHour: bigint;
  readonly dynoRateMinorPerHour: bigint;
  readonly dynoCostMinorPerHour: bigint;
  readonly quoteValidDays: number;
  readonly depositSharePct: number;
  readonly discountLimitPct: number;
};

const taxNames: Readonly<Record<Jurisdiction, string>> = { AU: "GST", AE: "VAT", SA: "VAT" };

/** Throws when the site's own settings make no sense: nobody at the desk can mend that. */
export async function quoteSite(tx: Transaction): Promise<QuoteSite> {
  const site = await tx.site.findFirstOrThrow({ orderBy: { name: "asc" } });
  const jurisdiction = jurisdictions.find((code) => code === site.jurisdiction.slice(0, 2));
  if (!jurisdiction) throw new Error(`no tax rules for the jurisdiction ${site.jurisdiction}`);
  const { currency } = site;
  if (!isCurrencyCode(currency)) throw new Error(`the currency ${currency} is not known`);
  return { ...site, currency, jurisdiction, taxName: taxNames[jurisdiction] };
}
