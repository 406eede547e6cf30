import { z } from "zod";
import { ok, type Result } from "../core/result";
import { command, type PersonWork } from "../core/use-case";
import { PAST_A_LIMIT, VOID } from "./barred-run";
import { refuse } from "./dyno-refusals";
import { runsTheDyno } from "./dyno-skill";
import { lockDyno } from "./lock-dyno";

const runId = z.uuid("Open the dyno page again and choose the run there.");
const reason = z
  .string("Say why.")
  .trim()
  .min(5, "Say why in a few words, so that the next reader can judge it.")
  .max(300, "Keep the reason under 300 characters.");

/** Leaves a run out of the figures. It stays in the record with the reason. */
export const excludeRun = command({
  name: "dyno.exclude-run",
  permission: "dyno:write",
  input: z.strictObject({ runId, reason }),
  async run(work, input) {
    const found = await changeableRun(work, input.runId);
    if (!found.ok) return found;
    const { count } = await work.tx.dynoRun.updateMany({
      where: { id: input.runId, excludedBecause: null },
      data: { excludedBecause: input.reason },
    });
    if (count === 0) return refuse("already-excluded");
    work.audit({
      entity: "dyno run",
      entityId: input.runId,
      before: { excludedBecause: null },
      after: { excludedBecause: input.reason },
    });
    return ok({ number: found.value.number });
  },
});

/** Counts a run again that was left out, and records why. Never one that went past an abort limit. */
export const countRunAgain = command({
  name: "dyno.count-run-again",
  permission: "dyno:write",
  input: z.strictObject({ runId, reason }),
  async run(work, input) {
    const found = await changeableRun(work, input.runId);
    if (!found.ok) return found;
    const before = found.value.excludedBecause;
    if (before === null) return refuse("not-excluded");
    if (before.startsWith(PAST_A_LIMIT))
      return refuse("past-a-limit", { because: before.slice(PAST_A_LIMIT.length) });
    if (before.startsWith(VOID)) return refuse("run-void", { because: before.slice(VOID.length) });
    const { count } = await work.tx.dynoRun.updateMany({
      where: { id: input.runId, excludedBecause: before },
      data: { excludedBecause: null },
    });
    if (count === 0) return refuse("not-excluded");
    work.audit({
      entity: "dyno run",
      entityId: input.runId,
      before: { excludedBecause: before },
      after: { excludedBecause: null, reason: input.reason },
    });
    return ok({ number: found.value.number });
  },
});

type Found = { readonly number: number; readonly excludedBecause: string | null };

/** A run of this workshop on which no verdict rests. */
async function changeableRun({ tx, person }: PersonWork, id: string): Promise<Result<Found>> {
  if (!runsTheDyno(person)) return refuse("skill-missing");
  const known = await tx.dynoRun.findUnique({
    where: { id },
    select: { dynoSession: { select: { id: true, vehicleId: true } } },
  });
  if (!known) return refuse("run-not-found");
  await lockDyno(tx, known.dynoSession.vehicleId);
  const session = known.dynoSession.id;
  const run = await tx.dynoRun.findUnique({ where: { id }, select: { number: true, excludedBecause: true } });
  if (!run) return refuse("run-not-found");
  const rests = await tx.verdict.count({ where: { OR: [{ baselineId: session }, { proofId: session }] } });
  return rests > 0 ? refuse("verdict-stands") : ok(run);
}
