/** What stands in the way of an item beside the present choices. */
export type Obstacle = {
  readonly item: string;
  /**
   * Chosen items that cannot stand beside it, the groups and rules given; in the order of the choices.
   * Empty when it could not be had without any choice either.
   */
  readonly chosen: readonly string[];
  readonly groups: readonly string[];
  readonly rules: readonly string[];
  /** What is barred and has a part in it: the item itself, or something that it cannot do without. */
  readonly barred: readonly string[];
  /** Choices that would have to go for it; empty when that would not help. */
  readonly replaces: readonly string[];
};
