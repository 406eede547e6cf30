import { figureText } from "@/design/figure-text";
import { moneyText } from "@/design/money-text";
import { shareText } from "./share-text";
import type { ShownPackage } from "./shown-margins";

/** What a job would have to sell at to earn the quoted share at what jobs really cost. */
export function PriceSentence({
  price,
  earnings,
  currency,
}: Pick<ShownPackage, "price" | "earnings" | "currency">) {
  if (!price) return null;
  const { isMinor, neededMinor } = price;
  const change = (neededMinor / isMinor - 1) * 100;
  const sold = `On average a job sold at ${moneyText(isMinor, currency)}`;
  if (neededMinor <= isMinor) {
    return (
      <p>
        {sold} and earned what was quoted, {shareText(earnings.quotedMargin)}, or more.
      </p>
    );
  }
  return (
    <p>
      {sold}. To earn the quoted {shareText(earnings.quotedMargin)} at what these jobs really cost, it would
      have to sell at <strong>{moneyText(neededMinor, currency)}</strong>, {figureText(change, 1, true)} %.
    </p>
  );
}
