import { type Quantity, quantityConstructor } from "./quantity";

export type RevolutionsPerMinute = Quantity<"RevolutionsPerMinute">;
export type Kilowatts = Quantity<"Kilowatts">;
export type NewtonMetres = Quantity<"NewtonMetres">;

export const revolutionsPerMinute: (value: number) => RevolutionsPerMinute = quantityConstructor(
  "RevolutionsPerMinute",
  0,
);
export const kilowatts: (value: number) => Kilowatts = quantityConstructor("Kilowatts");
export const newtonMetres: (value: number) => NewtonMetres = quantityConstructor("NewtonMetres");

const RADIANS_PER_REVOLUTION = 2 * Math.PI;

/** The identity P = T·ω, in kW from N·m and 1/min. */
export function powerFromTorque(torque: NewtonMetres, speed: RevolutionsPerMinute): Kilowatts {
  return kilowatts((torque * RADIANS_PER_REVOLUTION * speed) / 60_000);
}

/** The identity T = P/ω. Speed must not be zero. */
export function torqueFromPower(power: Kilowatts, speed: RevolutionsPerMinute): NewtonMetres {
  return newtonMetres((power * 60_000) / (RADIANS_PER_REVOLUTION * speed));
}
