import { PrismaPg } from "@prisma/adapter-pg";
import { type Prisma, PrismaClient } from "../generated/client";
import { databaseRefusal } from "./database-refusal";

/** One database transaction; everything read or written goes through it. */
export type Transaction = Prisma.TransactionClient;

type TransactionOptions = {
  /** Read committed unless the work reads and then decides on what it read. */
  readonly isolation?: "ReadCommitted" | "RepeatableRead" | "Serializable";
  /** Longest run in milliseconds; 15 s unless given. */
  readonly timeoutMs?: number;
};

/** The application's way to its data: as a role that is neither superuser nor owner. */
export type Database = {
  /** Runs `work` in one transaction that sees the rows of that workshop and no other. */
  inWorkshop<T>(
    workshopId: string,
    work: (transaction: Transaction) => Promise<T>,
    options?: TransactionOptions,
  ): Promise<T>;
  /** Runs `work` with no workshop set: no tenant row is visible; for the look-ups made for sign-in and links. */
  asOutsider<T>(work: (transaction: Transaction) => Promise<T>): Promise<T>;
  /** Resolves when the database answers, else throws. */
  ping(): Promise<void>;
  close(): Promise<void>;
};

const ATTEMPTS = 3;

/** Opens a pool of at most `max` connections for `buildproof_app` at `appUrl`. */
export function openDatabase(options: { readonly appUrl: string; readonly max?: number }): Database {
  const adapter = new PrismaPg({
    connectionString: options.appUrl,
    max: options.max ?? 10,
    connectionTimeoutMillis: 10_000,
    // The adapter sends instants as bare UTC text, so the server must read them as such.
    options: "-c timezone=UTC",
  });
  const client = new PrismaClient({ adapter });

  async function transact<T>(
    workshopId: string,
    work: (transaction: Transaction) => Promise<T>,
    settings: TransactionOptions,
  ): Promise<T> {
    for (let attempt = 1; ; attempt += 1) {
      try {
        return await client.$transaction(
          async (transaction) => {
            await transaction.$executeRaw`select set_config('app.workshop_id', ${workshopId}, true)`;
            return work(transaction);
          },
          {
            maxWait: 10_000,
            timeout: settings.timeoutMs ?? 15_000,
            ...(settings.isolation ? { isolationLevel: settings.isolation } : {}),
          },
        );
      } catch (error) {
        // Somebody else's transaction won; ours left nothing behind and may simply run again.
        if (attempt >= ATTEMPTS || databaseRefusal(error)?.kind !== "conflict") throw error;
      }
    }
  }

  return {
    inWorkshop: (workshopId, work, settings = {}) => transact(workshopId, work, settings),
    asOutsider: (work) => transact("", work, {}),
    ping: async () => {
      await client.$queryRaw`select 1`;
    },
    close: () => client.$disconnect(),
  };
}
