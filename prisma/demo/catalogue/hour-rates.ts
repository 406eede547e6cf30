/** Hourly rates, in cents without tax; the cost of an hour is wages and on-costs, not overhead. */
export const hourRates = {
  workshop: { priceCents: 165_00, costCents: 66_00 },
  dyno: { priceCents: 260_00, costCents: 95_00 },
} as const;
