import type { Transaction } from "@buildproof/database";
import { type Jurisdiction, jurisdictions } from "@buildproof/pricing";
import { type CurrencyCode, isCurrencyCode, type MinorUnits, minorUnits } from "@buildproof/units";

/** Where the work is done: it decides clock, money, tax and the hot day. */
export type Site = {
  readonly id: string;
  readonly name: string;
  readonly timeZone: string;
  readonly currency: CurrencyCode;
  readonly jurisdiction: Jurisdiction;
  readonly designAmbientC: number;
  readonly altitudeM: number;
  /** Prices and costs of an hour, in minor units without tax. */
  readonly hourRates: Readonly<Record<"workshop" | "dyno", HourRate>>;
};

export type HourRate = { readonly priceMinor: MinorUnits; readonly costMinor: MinorUnits };

/** The workshop's site. Throws when there is none, or its money or tax is not one we know. */
export async function readSite(tx: Transaction): Promise<Site> {
  const row = await tx.site.findFirstOrThrow({ orderBy: { name: "asc" } });
  const jurisdiction = jurisdictions.find((known) => known === row.jurisdiction);
  if (!jurisdiction) throw new Error(`site ${row.name}: no tax rules for ${row.jurisdiction}`);
  if (!isCurrencyCode(row.currency)) throw new Error(`site ${row.name}: unknown currency ${row.currency}`);
  return {
    id: row.id,
    name: row.name,
    timeZone: row.timeZone,
    currency: row.currency,
    jurisdiction,
    designAmbientC: row.designAmbientC,
    altitudeM: row.altitudeM,
    hourRates: {
      workshop: {
        priceMinor: minorUnits(row.labourRateMinorPerHour),
        costMinor: minorUnits(row.labourCostMinorPerHour),
      },
      dyno: {
        priceMinor: minorUnits(row.dynoRateMinorPerHour),
        costMinor: minorUnits(row.dynoCostMinorPerHour),
      },
    },
  };
}
