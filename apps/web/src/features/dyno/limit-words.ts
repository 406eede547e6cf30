import type { AbortLimit } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";

/** "lift below 14.0 MPa, from 5,000 rpm" */
export function limitSentence({ side, stop, unit, decimals, fromRpm }: AbortLimit): string {
  const from = fromRpm > 0 ? `, from ${figureText(fromRpm)} rpm` : "";
  return `lift ${side === "most" ? "above" : "below"} ${figureText(stop, decimals)} ${unit}${from}`;
}
