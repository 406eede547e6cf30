export { labour } from "./labour/labour";
export type { AccessWork, Labour, LabourPlan, Operation } from "./labour/labour-plan";
export { margin } from "./margin/margin";
export { priceForMargin } from "./margin/price-for-margin";
export { type Spread, spread } from "./margin/spread";
export { type Deposit, type DepositTerms, depositFor } from "./quote/deposit-for";
export {
  type Jurisdiction,
  jurisdictions,
  type QuoteLine,
  type QuoteLines,
  type QuoteTotals,
  type TaxCategory,
  type TaxRounding,
  type TaxSubtotal,
  type TotalledLine,
  taxCategories,
  taxRoundings,
} from "./quote/quote-lines";
export { quoteTotals } from "./quote/quote-totals";
export { taxRate } from "./quote/tax-rate";
