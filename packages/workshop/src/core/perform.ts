import { createHash } from "node:crypto";
import { databaseRefusal, type Transaction } from "@buildproof/database";
import { z } from "zod";
import type { ActingPerson, Actor, Role } from "./actor";
import { type AuditEntry, asJson, writeAudit } from "./audit";
import type { Context } from "./context";
import { refusalOfDatabase } from "./database-sentences";
import { newId } from "./new-id";
import { mayDo } from "./permissions";
import { type Refusal, type Result, refusals } from "./result";
import type { UseCase, Work } from "./use-case";

const refuse = refusals({
  "not-signed-in": () => "You are not signed in. Sign in and try again; what you typed is kept.",
  "session-over": () => "You were signed out everywhere. Sign in again.",
  "not-allowed": (d: { useCase: string }) =>
    `Your role does not include this (${d.useCase}). Ask the owner if it should.`,
  "link-not-valid": () => "This link is no longer valid. Ask the workshop for a new one.",
  "key-reused": () => "This entry was already sent with other content. Open the page again and repeat it.",
});

/** Thrown inside the transaction to roll it back, caught outside it. */
class Refused extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal.code);
  }
}

type Signed = Exclude<Actor, { kind: "nobody" }>;

/**
 * The one way to run a use case: permission, input, one transaction, audit, and the stored reply when a
 * device sends the same thing twice. Throws only for what nobody present can mend.
 */
export async function perform<Schema extends z.ZodType, Value>(
  context: Context,
  useCase: UseCase<Schema, Value>,
  input: unknown,
  options: { readonly key?: string } = {},
): Promise<Result<Value>> {
  const { actor } = context;
  if (actor.kind === "nobody") return refuse("not-signed-in");
  try {
    return await context.database.inWorkshop(
      actor.workshopId,
      async (tx) => {
        const person = await admit(tx, context, actor, useCase);
        const parsed = useCase.input.safeParse(input);
        if (!parsed.success) throw new Refused(refusalOfInput(parsed.error));
        const earlier = options.key ? await earlierReply(tx, actor, useCase, options.key, input) : null;
        if (earlier) return earlier.reply as Result<Value>; // The reply that this very use case stored.
        const result = await runAudited(tx, context, actor, person, useCase, parsed.data);
        if (options.key) await keepReply(tx, context, actor, useCase, options.key, input, result);
        return result;
      },
      {
        ...(useCase.isolation ? { isolation: useCase.isolation } : {}),
        ...(useCase.timeoutMs ? { timeoutMs: useCase.timeoutMs } : {}),
      },
    );
  } catch (error) {
    if (error instanceof Refused) return { ok: false, refusal: error.refusal };
    const refusal = refusalOfDatabase(databaseRefusal(error));
    if (refusal) return { ok: false, refusal };
    throw error;
  }
}

async function runAudited<Schema extends z.ZodType, Value>(
  tx: Transaction,
  context: Context,
  actor: Signed,
  person: ActingPerson | null,
  useCase: UseCase<Schema, Value>,
  input: z.output<Schema>,
): Promise<Result<Value>> {
  const entries: AuditEntry[] = [];
  const now = context.now();
  const work: Work = {
    tx,
    workshopId: actor.workshopId,
    actor,
    person,
    now,
    address: context.address,
    files: context.files,
    audit: (entry) => entries.push(entry),
  };
  const result = await useCase.run(work, input);
  if (!result.ok) throw new Refused(result.refusal);
  const setting = {
    workshopId: actor.workshopId,
    actor,
    person,
    useCase: useCase.name,
    now,
    requestId: context.requestId,
  };
  await writeAudit(tx, setting, entries);
  return result;
}

/** Finds who acts as the database knows them now, and holds them against the permission table. */
async function admit(
  tx: Transaction,
  context: Context,
  actor: Signed,
  useCase: UseCase,
): Promise<ActingPerson | null> {
  if (actor.kind === "customer") {
    const link = await tx.customerLink.findUnique({ where: { id: actor.linkId } });
    const open =
      link && link.versionId === actor.versionId && !link.revokedAt && link.expiresAt > context.now();
    if (!open) throw refused(refuse("link-not-valid"));
    if (!mayDo(useCase.permission, ["customer"]))
      throw refused(refuse("not-allowed", { useCase: useCase.name }));
    return null;
  }
  const person = await tx.person.findUnique({ where: { id: actor.personId } });
  if (!person?.active || person.sessionCounter !== actor.sessionCounter)
    throw refused(refuse("session-over"));
  const roles: readonly Role[] = person.roles;
  if (!mayDo(useCase.permission, roles)) throw refused(refuse("not-allowed", { useCase: useCase.name }));
  return { id: person.id, name: person.name, email: person.email, roles, skills: person.skills };
}

function refused(result: { readonly refusal: Refusal }): Refused {
  return new Refused(result.refusal);
}

/** The first thing wrong with the input, in the schema's own words. */
function refusalOfInput(error: z.ZodError): Refusal {
  const issue = error.issues[0];
  const field = issue?.path.join(".") ?? "";
  const message = issue?.message ?? "Something is missing.";
  // Our own messages are sentences and say what they are about; the schema library's own need the field's name.
  const isSentence = /[.!?]$/.test(message);
  return {
    code: "invalid-input",
    sentence: field && !isSentence ? `${field}: ${message}` : message,
    ...(field ? { field } : {}),
    data: z.flattenError(error),
  };
}

function actorId(actor: Signed): string {
  return actor.kind === "person" ? actor.personId : actor.linkId;
}

function hashOf(useCase: UseCase, input: unknown): string {
  return createHash("sha256")
    .update(`${useCase.name}\n${JSON.stringify(input)}`)
    .digest("hex");
}

async function earlierReply(tx: Transaction, actor: Signed, useCase: UseCase, key: string, input: unknown) {
  // Two copies of one request at once: the second waits here until the first has stored its reply.
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`${actorId(actor)} ${key}`}, 0))`;
  const earlier = await tx.completedRequest.findUnique({
    where: { workshopId_actorId_key: { workshopId: actor.workshopId, actorId: actorId(actor), key } },
  });
  if (earlier && earlier.requestHash !== hashOf(useCase, input)) throw refused(refuse("key-reused"));
  return earlier;
}

async function keepReply(
  tx: Transaction,
  context: Context,
  actor: Signed,
  useCase: UseCase,
  key: string,
  input: unknown,
  result: Result<unknown>,
): Promise<void> {
  await tx.completedRequest.create({
    data: {
      id: newId(),
      workshopId: actor.workshopId,
      actorId: actorId(actor),
      key,
      useCase: useCase.name,
      requestHash: hashOf(useCase, input),
      reply: asJson(result),
      at: context.now(),
    },
  });
}
