import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { dateInZone, isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";
import { jobStatusWords } from "../jobs/job-states";
import { quoteMoney } from "../quotes/quote-money";
import { followUpCode, holdsBack } from "./obligation-states";
import { refuse } from "./paperwork-refusals";
import { readStanding } from "./settle-job";

/** The hand-over page: obligations with their evidence, every open point, and what was recorded at the keys. */
export const readHandOver = query({
  name: "paperwork.read-hand-over",
  permission: "jobs:read",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run({ tx, now, person }, { jobId }) {
    const job = await tx.job.findUnique({
      where: { id: jobId },
      include: {
        customer: { select: { id: true, name: true } },
        vehicle: { include: { vehicleModel: { select: { name: true } } } },
        version: true,
        checkIn: true,
        handOver: true,
      },
    });
    const standing = job && (await readStanding(tx, jobId));
    if (!job || !standing) return refuse("job-not-found");
    const { timeZone } = await readSite(tx);
    const { handOver, checkIn, vehicle } = job;
    return ok({
      id: job.id,
      number: job.number,
      revision: job.revision,
      status: job.status,
      statusWords: jobStatusWords[job.status],
      timeZone,
      today: dateInZone(now, timeZone),
      customer: job.customer,
      vehicle: { plate: vehicle.plate, model: vehicle.vehicleModel.name, odometerKm: vehicle.odometerKm },
      cautions: job.version.cautions,
      money: await quoteMoney(tx, job.quoteId, job.version),
      obligations: standing.obligations,
      holding: standing.obligations.filter(holdsBack).length,
      notLaidOut: standing.notLaidOut,
      points: standing.points,
      asksFollowUp: standing.obligations.some(({ code, met }) => code === followUpCode && !met),
      checkIn: checkIn ? { odometerKm: checkIn.odometerKm, keys: checkIn.keys } : null,
      may: {
        attach: mayDo("evidence:write", person.roles),
        handOver: mayDo("hand-over:write", person.roles),
      },
      handOver: handOver
        ? {
            at: handOver.at,
            receivedBy: handOver.receivedBy,
            odometerKm: handOver.odometerKm,
            keys: handOver.keys,
            followUpOn: handOver.followUpOn ? isoDateOf(handOver.followUpOn) : null,
            note: handOver.note,
          }
        : null,
    });
  },
});
