/** Waits for its turn; `leave` tells the next that it may begin. */
type Turn = { readonly begun: Promise<boolean>; readonly leave: () => void };

/**
 * One at a time, in the order of asking. Who is called off, or has waited to the end of its time, goes at once
 * and holds nobody up.
 */
export class Turns {
  readonly #waiting: (() => void)[] = [];
  #isTaken = false;

  /** `begun` is true when the turn has come, false when it was given up before. */
  take(untilMs: number, cancelled: AbortSignal | undefined): Turn {
    let hasBegun = false;
    const begun = new Promise<boolean>((resolve) => {
      const begin = (): void => {
        this.#isTaken = true;
        settle(true);
      };
      const giveUp = (): void => {
        const at = this.#waiting.indexOf(begin);
        if (at >= 0) this.#waiting.splice(at, 1);
        settle(false);
      };
      const timer = setTimeout(giveUp, Math.max(0, untilMs - performance.now()));
      const settle = (isOurs: boolean): void => {
        clearTimeout(timer);
        cancelled?.removeEventListener("abort", giveUp);
        hasBegun = isOurs;
        resolve(isOurs);
      };
      cancelled?.addEventListener("abort", giveUp, { once: true });
      if (cancelled?.aborted) giveUp();
      else if (this.#isTaken) this.#waiting.push(begin);
      else begin();
    });
    const leave = (): void => {
      if (!hasBegun) return;
      hasBegun = false;
      this.#isTaken = false;
      this.#waiting.shift()?.();
    };
    return { begun, leave };
  }
}
