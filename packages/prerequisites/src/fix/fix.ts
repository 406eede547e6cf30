/** A way to clear one finding. */
export type Fix = {
  /** Items to add, in the order of the catalogue. */
  readonly add: readonly string[];
  /** Sum over the added items, in the model's own unit of money. */
  readonly price: number;
  readonly hours: number;
  /** The largest among the added items. */
  readonly leadDays: number;
  /** Findings that were there already and that this makes worse; never a new one. */
  readonly worsens: readonly string[];
};
