import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { watchedLimits } from "./abort-limits";
import { baselinePassed } from "./baseline-passed";
import { refuse } from "./dyno-refusals";
import { runsTheDyno } from "./dyno-skill";
import { vehicleFacts, vehicleSelect } from "./dyno-vehicle";
import { measuredEngine } from "./measured-engine";
import { readSessions } from "./session-record";
import { limitedEngine, operatorNames, sessionView, settledSessions } from "./session-view";
import { proposeSetUp } from "./set-up-proposal";
import { siteClock } from "./site-clock";

/** A vehicle's dyno page: every session it ever had, and whether its baseline stands. */
export const showVehicleDyno = query({
  name: "dyno.show-vehicle",
  permission: "dyno:read",
  input: z.strictObject({ vehicleId: z.uuid("Open the vehicle again.") }),
  async run({ tx, person }, { vehicleId }) {
    const vehicle = await tx.vehicle.findUnique({ where: { id: vehicleId }, select: vehicleSelect });
    if (!vehicle) return refuse("vehicle-not-found");
    const engine = measuredEngine(vehicle.vehicleModel.figures);
    const sessions = await readSessions(tx, { vehicleId });
    const names = await operatorNames(tx, sessions);
    const context = { engine, names, settled: await settledSessions(tx, sessions) };
    const jobs = await tx.job.findMany({
      where: { vehicleId },
      select: { id: true, number: true, status: true },
      orderBy: { number: "desc" },
    });
    const newest = sessions.at(-1) ?? { runs: [] };
    return ok({
      ...(await siteClock(tx)),
      vehicle: vehicleFacts(vehicle),
      mayMeasure: runsTheDyno(person) && mayDo("dyno:write", person.roles),
      baseline: await baselinePassed(tx, vehicleId),
      sessions: sessions.map((session) => ({
        ...sessionView(session, context),
        jobId: session.jobId,
        jobNumber: jobs.find(({ id }) => id === session.jobId)?.number ?? null,
      })),
      watched: watchedLimits(limitedEngine(engine, newest)),
      jobs,
      proposal: await proposeSetUp(tx, { engine, figures: vehicle.vehicleModel.figures }, null, []),
    });
  },
});
