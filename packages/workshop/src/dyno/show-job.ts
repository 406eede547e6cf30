import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { selectionOf } from "../jobs/accepted-selection";
import { jobStatusWords } from "../jobs/job-states";
import { readPromise } from "../quotes/stored-promise";
import { watchedLimits } from "./abort-limits";
import { compareSessions } from "./compare-sessions";
import { refuse } from "./dyno-refusals";
import { runsTheDyno } from "./dyno-skill";
import { vehicleFacts, vehicleSelect } from "./dyno-vehicle";
import { type JobSessions, jobSessions } from "./job-sessions";
import { limitedEngine } from "./limit-readings";
import { kindsFor } from "./measured-vehicle";
import type { SessionRecord } from "./session-record";
import { proposeSetUp } from "./set-up-proposal";
import { siteClock } from "./site-clock";
import { vehicleSessions } from "./vehicle-sessions";
import { weighPromise } from "./weigh-promise";

/** A job's dyno page: baseline, steps and proof over one another, the promise, and the verdict. */
export const showJobDyno = query({
  name: "dyno.show-job",
  permission: "dyno:read",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run({ tx, person }, { jobId }) {
    const job = await tx.job.findUnique({ where: { id: jobId }, select: jobSelect });
    if (!job) return refuse("job-not-found");
    const { engine, records, views } = await vehicleSessions(tx, job.vehicle);
    const found = jobSessions(job, records);
    const { baseline, proof, steps } = found;
    const view = ({ id }: SessionRecord) => views.find((each) => each.id === id) ?? null;
    const promise = readPromise(job.version.promise);
    return ok({
      ...(await siteClock(tx)),
      job: {
        id: job.id,
        number: job.number,
        statusWords: jobStatusWords[job.status],
        goal: job.version.goal,
        customer: job.customer.name,
      },
      vehicle: vehicleFacts(job.vehicle),
      mayMeasure: runsTheDyno(person) && mayDo("dyno:write", person.roles),
      kinds: kindsFor(job.status),
      promise,
      baseline: baseline ? view(baseline) : null,
      steps: steps.flatMap((step) => view(step) ?? []),
      proof: proof ? view(proof) : null,
      /** Of the vehicle, oldest first, other jobs' among them. */
      sessions: views,
      comparison: baseline && proof ? compareSessions(baseline, proof) : null,
      weighed: promise && proof ? weighPromise(promise, proof) : null,
      verdict: await releasedVerdict(tx, jobId, found),
      watched: watchedLimits(limitedEngine(engine, proof ?? { runs: [] })),
      proposal: await proposeSetUp(
        tx,
        { engine, figures: job.vehicle.vehicleModel.figures },
        baseline,
        selectionOf(job.version.selection),
      ),
    });
  },
});

const jobSelect = {
  id: true,
  number: true,
  status: true,
  buildId: true,
  vehicle: { select: vehicleSelect },
  customer: { select: { name: true } },
  version: { select: { promise: true, selection: true, goal: true } },
} as const;

/** The newest verdict, and whether it is about the proof that stands now. */
async function releasedVerdict(tx: Transaction, jobId: string, { proof }: JobSessions) {
  const row = await tx.verdict.findFirst({ where: { jobId }, orderBy: [{ at: "desc" }, { id: "desc" }] });
  if (!row) return null;
  const by = await tx.person.findUnique({ where: { id: row.personId }, select: { name: true } });
  return {
    outcome: row.outcome,
    sentence: row.sentence,
    at: row.at,
    by: by?.name ?? "",
    isCurrent: row.proofId === proof?.id,
  };
}
