import type { Transaction } from "@buildproof/database";
import type { ActingPerson, Actor } from "./actor";
import { newId } from "./new-id";

/** One line of the audit record: what was touched, and how it looked before and after. */
export type AuditEntry = {
  readonly entity: string;
  readonly entityId: string;
  readonly before?: unknown;
  readonly after?: unknown;
};

type Setting = {
  readonly workshopId: string;
  readonly actor: Exclude<Actor, { kind: "nobody" }>;
  readonly person: ActingPerson | null;
  readonly useCase: string;
  readonly now: Date;
  readonly requestId: string;
};

export async function writeAudit(
  tx: Transaction,
  setting: Setting,
  entries: readonly AuditEntry[],
): Promise<void> {
  if (entries.length === 0) return;
  await tx.auditEvent.createMany({
    data: entries.map((entry) => ({
      id: newId(),
      workshopId: setting.workshopId,
      at: setting.now,
      actorKind: setting.actor.kind,
      actorId: setting.actor.kind === "person" ? setting.actor.personId : setting.actor.linkId,
      actorName: setting.person?.name ?? "customer by link",
      useCase: setting.useCase,
      entity: entry.entity,
      entityId: entry.entityId,
      requestId: setting.requestId,
      ...(entry.before === undefined ? {} : { before: asJson(entry.before) }),
      ...(entry.after === undefined ? {} : { after: asJson(entry.after) }),
    })),
  });
}

export type Json =
  | string
  | number
  | boolean
  | { readonly [name: string]: Json | null }
  | readonly (Json | null)[];

/** Plain JSON of any value: money's bigint as a decimal string. */
export function asJson(value: unknown): Json {
  return JSON.parse(
    JSON.stringify(value, (_, inner) => (typeof inner === "bigint" ? inner.toString() : inner)),
  );
}
