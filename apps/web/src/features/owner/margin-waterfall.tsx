import { type CostKind, costKinds, type Earnings } from "@buildproof/workshop";
import { moneyText } from "@/design/money-text";
import { Waterfall } from "@/design/plots/waterfall";
import { kindWords } from "./kind-words";
import { shareText } from "./share-text";

interface MarginWaterfallProps {
  readonly caption: string;
  readonly earnings: Earnings;
  readonly currency: string;
  /** Where a step opens into what is behind it. */
  readonly hrefOf: (kind: CostKind) => string;
  readonly endLabel?: string;
}

/** From the quoted margin to the earned one, a step for each kind of cost that differs or was expected. */
export function MarginWaterfall({ caption, earnings, currency, hrefOf, endLabel }: MarginWaterfallProps) {
  const { jobs, quotedMinor, actualMinor } = earnings;
  const shown = costKinds.filter((kind) => quotedMinor[kind] !== 0 || actualMinor[kind] !== 0);
  return (
    <Waterfall
      caption={caption}
      currency={currency}
      startLabel={`Quoted margin, ${shareText(earnings.quotedMargin)}`}
      startMinor={earnings.quotedMarginMinor}
      steps={shown.map((kind) => {
        const minor = quotedMinor[kind] - actualMinor[kind];
        return {
          id: kind,
          label: kindWords[kind],
          minor,
          href: hrefOf(kind),
          ...(jobs > 1 ? { note: `${moneyText(Math.round(minor / jobs), currency, true)} a job` } : {}),
        };
      })}
      endLabel={`${endLabel ?? "Earned margin"}, ${shareText(earnings.actualMargin)}`}
    />
  );
}
