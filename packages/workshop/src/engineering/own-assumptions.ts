/**
 * What the build sheet assumes beyond the forecast itself: usual figure, least, most.
 *
 * @source  Consumption: the range of boosted, rich engines in the reference notes, 310 to 380 g/kWh. Enrichment of a
 *          held load: common practice, no source.
 */
export const ownAssumptions = {
  /** Of petrol at full load under boost; other fuels by their heat. */
  boostedBsfcGPerKwh: [345, 200, 600],
  /** The same without boost: leaner, and with less friction to a kilowatt; from memory. */
  breathingBsfcGPerKwh: [305, 200, 500],
  /** How much richer a load of 60 to 90 s is run than a sweep, as lambda. */
  sustainedEnrichment: [0.04, 0, 0.15],
} as const;

export type OwnAssumptionName = keyof typeof ownAssumptions;
export type OwnAssumptions = Readonly<Record<OwnAssumptionName, number>>;
