/**
 * What an item brings to one side of a capacity: a plain amount, or that of a whole part that takes the place of a
 * standard one. Of such a part only the difference counts, and what leaves the vehicle is a fact of the vehicle.
 */
export type CapacityAmount = number | { readonly whole: number; readonly lessFact: string };

/** The amount on a vehicle, in the rule's unit; a lesser part than the standard one takes away. */
export function amountOn(facts: Readonly<Record<string, number | string>>, amount: CapacityAmount): number {
  return typeof amount === "number" ? amount : amount.whole - Number(facts[amount.lessFact] ?? 0);
}
