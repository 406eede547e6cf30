/** How long a calculation that searches may take, and what calls it off. */
export type Limits = {
  /** Milliseconds; 10,000 unless said. */
  readonly withinMs?: number | undefined;
  readonly cancelled?: AbortSignal | undefined;
};
