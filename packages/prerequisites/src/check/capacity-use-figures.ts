/** One amount that an item brings or takes. */
export type Contribution = { readonly item: string; readonly amount: number };

/** A capacity as the chain draws it: what is asked against what can be given. */
export type CapacityUse = {
  readonly rule: string;
  readonly quantity: string;
  readonly because: string;
  /** What the vehicle gives before anything is chosen. */
  readonly base: number;
  /** base + Σ supply of the selected. */
  readonly supply: number;
  /** Σ demand of the selected, without the reserve. */
  readonly demand: number;
  readonly reservePct: number;
  /** demand ÷ supply; null when nothing is supplied. */
  readonly asked: number | null;
  /** supply ÷ demand − 1; null when nothing is demanded. */
  readonly headroom: number | null;
  /** 1 − supply ÷ demand when that is above 0; otherwise null. */
  readonly shortBy: number | null;
  /** Whether the rule holds, the reserve included. */
  readonly met: boolean;
  readonly suppliers: readonly Contribution[];
  readonly demanders: readonly Contribution[];
};
