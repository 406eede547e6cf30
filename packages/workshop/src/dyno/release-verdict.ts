import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { newId } from "../core/new-id";
import { ok, type Result } from "../core/result";
import { command } from "../core/use-case";
import { settleIfDone } from "../paperwork/settle-job";
import { type QuotePromise, readPromise } from "../quotes/stored-promise";
import { codeOf, compareSessions, sameCode } from "./compare-sessions";
import { refuse } from "./dyno-refusals";
import { runsTheDyno } from "./dyno-skill";
import { jobSessions } from "./job-sessions";
import { lockDyno } from "./lock-dyno";
import { readSessions, type SessionRecord } from "./session-record";
import { weighPromise } from "./weigh-promise";

/** Says, with a name under it, whether the proof keeps what the accepted version promised. */
export const releaseVerdict = command({
  name: "dyno.release-verdict",
  permission: "dyno:write",
  input: z.strictObject({
    jobId: z.uuid("Open the job's dyno page again."),
    /** The sentence the person read: what they put their name to. */
    seen: z.string("Open the job's dyno page again.").min(1, "Open the job's dyno page again."),
  }),
  async run(work, { jobId, seen }) {
    const { tx, workshopId, person, now } = work;
    if (!runsTheDyno(person)) return refuse("skill-missing");
    const ready = await readyForVerdict(tx, jobId);
    if (!ready.ok) return ready;
    const { baseline, proof, promise } = ready.value;
    const weighed = weighPromise(promise, proof);
    if (weighed.sentence !== seen) return refuse("verdict-changed", { sentence: weighed.sentence });
    const id = newId();
    const { outcome, measuredKw, spreadPct, sentence } = weighed;
    await tx.verdict.create({
      data: {
        id,
        workshopId,
        jobId,
        baselineId: baseline.id,
        proofId: proof.id,
        outcome,
        promisedLowKw: promise.lowKw,
        promisedHighKw: promise.highKw,
        measuredKw,
        gainKw: compareSessions(baseline, proof)?.peakPowerKw ?? 0,
        spreadPct,
        sentence,
        personId: person.id,
        at: now,
      },
    });
    work.audit({ entity: "job", entityId: jobId, after: { verdict: sentence, outcome, proofId: proof.id } });
    await settleIfDone(work, jobId);
    return ok({ verdictId: id, outcome, sentence });
  },
});

type Ready = {
  readonly baseline: SessionRecord;
  readonly proof: SessionRecord;
  readonly promise: QuotePromise;
};

async function readyForVerdict(tx: Transaction, jobId: string): Promise<Result<Ready>> {
  const job = await tx.job.findUnique({
    where: { id: jobId },
    select: { id: true, buildId: true, vehicleId: true, version: { select: { promise: true } } },
  });
  if (!job) return refuse("job-not-found");
  await lockDyno(tx, job.vehicleId);
  const promise = readPromise(job.version.promise);
  if (!promise) return refuse("no-promise");
  const { baseline, proof } = jobSessions(job, await readSessions(tx, { vehicleId: job.vehicleId }));
  if (!proof) return refuse("proof-missing");
  if (!baseline) return refuse("baseline-missing");
  if (!sameCode(baseline, proof))
    return refuse("codes-differ", { baseline: codeOf(baseline), proof: codeOf(proof) });
  if ((await tx.verdict.count({ where: { jobId, proofId: proof.id } })) > 0)
    return refuse("verdict-released");
  return ok({ baseline, proof, promise });
}
