import type { Database } from "@buildproof/database";
import type { Actor } from "./actor";
import type { FileStore } from "./file-store";

/** What every use case is given: who acts, when, and through what. */
export type Context = {
  readonly database: Database;
  readonly files: FileStore;
  readonly actor: Actor;
  /** The clock is a parameter. */
  readonly now: () => Date;
  readonly requestId: string;
  /** The network address of the request, for sign-in and acceptance. */
  readonly address: string;
};
