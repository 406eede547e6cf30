import { figureText } from "@/design/figure-text";

/** A margin in basis points as people read it: "36.9 %". */
export function shareText(basisPoints: number | null): string {
  return basisPoints === null ? "nothing charged" : `${figureText(basisPoints / 100, 1)} %`;
}

/** The middle half of some margins, in per cent: "33.1 to 37.4 %". */
export function middleHalfText(
  spread: { readonly lowerQuartile: number; readonly upperQuartile: number } | null,
): string {
  return spread === null
    ? "–"
    : `${figureText(spread.lowerQuartile, 1)} to ${figureText(spread.upperQuartile, 1)} %`;
}

/** A share of 0 to 1 in whole per cent; a dash where nothing was decided. */
export function rateText(rate: number | null): string {
  return rate === null ? "–" : `${figureText(rate * 100)} %`;
}
