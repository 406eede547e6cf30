declare const meaning: unique symbol;

/** A number that carries what it means, so that a gauge pressure cannot be handed over as an absolute one. */
export type Quantity<Meaning extends string> = number & { readonly [meaning]: Meaning };

/** Makes the constructor of one quantity. It refuses NaN and infinity, and anything below `atLeast`. */
export function quantityConstructor<Meaning extends string>(
  name: Meaning,
  atLeast = Number.NEGATIVE_INFINITY,
): (value: number) => Quantity<Meaning> {
  return (value) => {
    if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, not ${value}.`);
    if (value < atLeast) throw new RangeError(`${name} must be at least ${atLeast}, not ${value}.`);
    // The only door through which a plain number becomes this quantity.
    return value as Quantity<Meaning>;
  };
}
