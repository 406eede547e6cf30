/** What adding something comes to in every measure, what comes along with it included. */
export type AddedFigures = {
  /** Sums over what is added, in the model's own units. */
  readonly price: number;
  readonly hours: number;
  /** The largest of what is added. */
  readonly leadDays: number;
};
