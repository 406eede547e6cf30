/** One entry of a list to choose from. */
export interface Option {
  readonly id: string;
  readonly label: string;
  readonly note?: string;
  /** Why it cannot be chosen now; the entry stays visible. */
  readonly refusedBecause?: string;
}
