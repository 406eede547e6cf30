import { type Quantity, quantityConstructor } from "./quantity";

export type Kelvin = Quantity<"Kelvin">;
export type Celsius = Quantity<"Celsius">;

export const kelvin: (value: number) => Kelvin = quantityConstructor("Kelvin", 0);
export const celsius: (value: number) => Celsius = quantityConstructor("Celsius", -273.15);

/** 0 °C is 273.15 K by definition (SI Brochure, 9th edition, 2.3.1). */
export function kelvinFromCelsius(temperature: Celsius): Kelvin {
  return kelvin(temperature + 273.15);
}
