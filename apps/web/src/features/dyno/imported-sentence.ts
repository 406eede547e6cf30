import type { ImportedSession } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";

/** "3 runs imported, highest 367 kW at the hubs, factor 1.0257." */
export function importedSentence({ runs, excluded, peakKw, factor }: ImportedSession): string {
  const counted = excluded === 0 ? "" : `, ${excluded} not counted`;
  return `${runs} ${runs === 1 ? "run" : "runs"} imported${counted}, highest ${figureText(peakKw)} kW at the hubs, factor ${factor.toFixed(4)}.`;
}
