import type { AbortLimit } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";

/** "lift below 14.0 MPa, from 5,000 rpm" */
export function limitSentence({ side, stop, unit, decimals, fromRpm }: AbortLimit): string {
  const from = fromRpm > 0 ? `, from ${figureText(fromRpm)} rpm` : "";
  return `lift ${side === "most" ? "above" : "below"} ${withUnit(stop, unit, decimals)}${from}`;
}

/** Lambda is said before its figure, units after theirs. */
export function withUnit(value: number, unit: string, decimals: number): string {
  const figure = figureText(value, decimals);
  return unit === "lambda" ? `lambda ${figure}` : `${figure} ${unit}`;
}
