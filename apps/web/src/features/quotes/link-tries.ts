import { RateLimiterMemory } from "rate-limiter-flexible";

const WRONG_TRIES = 30;
const QUARTER_HOUR_S = 15 * 60;

/**
 * Wrong links by network address. Kept in this process's memory: a token has 256 random bits, so the limit is
 * there against noise, and each process of a larger installation may count for itself.
 */
const limiter = new RateLimiterMemory({ points: WRONG_TRIES, duration: QUARTER_HOUR_S });

export const linkTries = {
  async areSpent(address: string): Promise<boolean> {
    const counted = await limiter.get(address);
    return counted !== null && counted.consumedPoints >= WRONG_TRIES;
  },
  async countWrong(address: string): Promise<void> {
    // Rejects once the points are spent; the next look says so.
    await limiter.consume(address).catch(() => undefined);
  },
};
