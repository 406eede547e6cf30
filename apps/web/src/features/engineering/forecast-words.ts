import type { CurvePeak } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";

/** "322–379 kW, expected 353 at 5,700 rpm": a forecast is never one figure. */
export function bandText({ low, expected, high, speedRpm }: CurvePeak, unit: string): string {
  return `${rangeText({ low, high }, unit)}, expected ${figureText(expected)} at ${figureText(speedRpm)} rpm`;
}

export function rangeText({ low, high }: Pick<CurvePeak, "low" | "high">, unit: string): string {
  return `${figureText(low)}–${figureText(high)} ${unit}`;
}

/** A figure that is assumed, with the digits it is given in. */
export function assumedText(value: number, unit: string): string {
  const digits = String(Number(value.toPrecision(6)));
  if (unit === "" || unit === "share") return digits;
  return unit === "°" ? `${digits}°` : `${digits} ${unit}`;
}
