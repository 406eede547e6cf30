import { moneyText } from "./money-text";

interface MoneyProps {
  /** Integer minor units of the currency. */
  readonly minor: bigint | number;
  readonly currency: string;
  readonly signed?: boolean;
}

/** An exact amount of money. */
export function Money({ minor, currency, signed = false }: MoneyProps) {
  return <span className="figure">{moneyText(minor, currency, signed)}</span>;
}
