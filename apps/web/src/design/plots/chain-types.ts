/** One stage that air, fuel or torque passes. Shares are demand ÷ supply: 1.1 asks a tenth more than there is. */
export interface ChainLink {
  readonly id: string;
  readonly name: string;
  /** What is asked of it by forecast; left out where nothing limits it. */
  readonly asked?: number;
  /** What the dyno showed, beside the forecast. */
  readonly measured?: number;
  /** In its own units: "11,400 of 14,000 rpm". */
  readonly figures?: string;
  readonly note?: string;
  readonly grade?: "fit" | "watch" | "stop";
}

export interface ChainPath {
  readonly id: string;
  readonly title: string;
  readonly links: readonly ChainLink[];
  /** The link of the first path before which this one runs in: fuel meets air before the engine. */
  readonly joinsBefore?: string;
}

/** The link that gives way first, in words. */
export interface WeakestLink {
  readonly linkId: string;
  readonly sentence: string;
}
