import type { AbortLimit } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";

/** "lift below 14.0 MPa, from 5,000 rpm" */
export function limitSentence(limit: AbortLimit): string {
  const from = fromWords(limit);
  return `lift ${liftWords(limit)}${from && `, ${from}`}`;
}

/** "below 14.0 MPa" */
export function liftWords({ side, stop, unit, decimals }: AbortLimit): string {
  return `${side === "most" ? "above" : "below"} ${withUnit(stop, unit, decimals)}`;
}

/** "from 5,000 rpm"; nothing where the limit holds at every speed. */
export function fromWords({ fromRpm }: AbortLimit): string {
  return fromRpm > 0 ? `from ${figureText(fromRpm)} rpm` : "";
}

/** Lambda is said before its figure, units after theirs. */
export function withUnit(value: number, unit: string, decimals: number): string {
  const figure = figureText(value, decimals);
  return unit === "lambda" ? `lambda ${figure}` : `${figure} ${unit}`;
}
