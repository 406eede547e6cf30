import type { Transaction } from "@buildproof/database";
import type { z } from "zod";
import type { ActingPerson, Actor } from "./actor";
import type { AuditEntry } from "./audit";
import type { FileStore } from "./file-store";
import type { Permission } from "./permissions";
import type { Result } from "./result";

/** What the work inside a use case may use. All of it belongs to one transaction. */
export type Work = {
  readonly tx: Transaction;
  readonly workshopId: string;
  readonly actor: Exclude<Actor, { kind: "nobody" }>;
  /** The signed-in person; null for a customer by link. */
  readonly person: ActingPerson | null;
  readonly now: Date;
  readonly address: string;
  readonly files: FileStore;
  /** Adds one line to the audit record, in the same transaction. */
  audit(entry: AuditEntry): void;
};

/** As `Work`, where the permission table admits persons only. */
export type PersonWork = Work & { readonly person: ActingPerson };

export type UseCase<Schema extends z.ZodType = z.ZodType, Value = unknown> = {
  /** Stage and verb, as the audit record shows it: `quotes.accept`. */
  readonly name: string;
  readonly permission: Permission;
  readonly input: Schema;
  /** True when it writes: then it has an audit line, and a device may send it twice under one key. */
  readonly writes: boolean;
  readonly isolation?: "ReadCommitted" | "RepeatableRead" | "Serializable";
  /** How long its transaction may take, where that is more than the usual 15 s: a whole catalogue at once. */
  readonly timeoutMs?: number;
  run(work: Work, input: z.output<Schema>): Promise<Result<Value>>;
};

/** What a use case answers when it is not refused. */
export type ValueOf<Case> = Case extends UseCase<infer _, infer Value> ? Value : never;

type PersonUseCase<Schema extends z.ZodType, Value> = Omit<UseCase<Schema, Value>, "run" | "writes"> & {
  run(work: PersonWork, input: z.output<Schema>): Promise<Result<Value>>;
};

/** A use case of a signed-in person that changes something. */
export function command<Schema extends z.ZodType, Value>(
  definition: PersonUseCase<Schema, Value>,
): UseCase<Schema, Value> {
  return { ...definition, writes: true, run: asPerson(definition.run) };
}

/** A use case of a signed-in person that only reads. */
export function query<Schema extends z.ZodType, Value>(
  definition: PersonUseCase<Schema, Value>,
): UseCase<Schema, Value> {
  return { ...definition, writes: false, run: asPerson(definition.run) };
}

/** A use case of a customer who holds a signed link. */
export function linkCommand<Schema extends z.ZodType, Value>(
  definition: Omit<UseCase<Schema, Value>, "writes">,
): UseCase<Schema, Value> {
  return { ...definition, writes: true };
}

export function linkQuery<Schema extends z.ZodType, Value>(
  definition: Omit<UseCase<Schema, Value>, "writes">,
): UseCase<Schema, Value> {
  return { ...definition, writes: false };
}

function asPerson<Input, Value>(run: (work: PersonWork, input: Input) => Promise<Result<Value>>) {
  return (work: Work, input: Input): Promise<Result<Value>> => {
    if (!work.person) throw new Error("a person's use case ran without a person");
    return run({ ...work, person: work.person }, input);
  };
}
