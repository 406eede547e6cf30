/** An item that is there because a rule asks for it. */
export type Step = {
  readonly item: string;
  /** The rule's id, or the group's. */
  readonly rule: string;
  readonly because: string;
  /** The selected items that bring the rule about; none where it holds on this vehicle whatever is chosen. */
  readonly causes: readonly string[];
};

/** Why something was added. */
export type Reason = {
  readonly item: string;
  /**
   * From the item back to a choice, nearest first: the item of each further step is a cause of the one before,
   * and a cause of the last is chosen, or it has none. Empty for an item that nothing needs.
   */
  readonly chain: readonly [Step, ...(readonly Step[])] | readonly [];
};
