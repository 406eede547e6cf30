import { type Quantity, quantityConstructor } from "./quantity";

/** Above vacuum. A barometer reads this; a boost gauge does not. */
export type KilopascalsAbsolute = Quantity<"KilopascalsAbsolute">;
/** Above (or below) the air around it. */
export type KilopascalsGauge = Quantity<"KilopascalsGauge">;

export const kilopascalsAbsolute: (value: number) => KilopascalsAbsolute = quantityConstructor(
  "KilopascalsAbsolute",
  0,
);
export const kilopascalsGauge: (value: number) => KilopascalsGauge = quantityConstructor("KilopascalsGauge");

export function absoluteFromGauge(
  gauge: KilopascalsGauge,
  ambient: KilopascalsAbsolute,
): KilopascalsAbsolute {
  return kilopascalsAbsolute(gauge + ambient);
}
