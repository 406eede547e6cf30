import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { watchedLimits } from "./abort-limits";
import { baselinePassed } from "./baseline-passed";
import { refuse } from "./dyno-refusals";
import { runsTheDyno } from "./dyno-skill";
import { vehicleFacts, vehicleSelect } from "./dyno-vehicle";
import { limitedEngine } from "./limit-readings";
import { proposeSetUp } from "./set-up-proposal";
import { siteClock } from "./site-clock";
import { vehicleSessions } from "./vehicle-sessions";

/** A vehicle's dyno page: every session it ever had, and whether its baseline stands. */
export const showVehicleDyno = query({
  name: "dyno.show-vehicle",
  permission: "dyno:read",
  input: z.strictObject({ vehicleId: z.uuid("Open the vehicle again.") }),
  async run({ tx, person }, { vehicleId }) {
    const vehicle = await tx.vehicle.findUnique({ where: { id: vehicleId }, select: vehicleSelect });
    if (!vehicle) return refuse("vehicle-not-found");
    const { engine, records, views, jobs } = await vehicleSessions(tx, vehicle);
    return ok({
      ...(await siteClock(tx)),
      vehicle: vehicleFacts(vehicle),
      mayMeasure: runsTheDyno(person) && mayDo("dyno:write", person.roles),
      baseline: await baselinePassed(tx, vehicleId),
      sessions: views,
      watched: watchedLimits(limitedEngine(engine, records.at(-1) ?? { runs: [] })),
      jobs,
      proposal: await proposeSetUp(tx, { engine, figures: vehicle.vehicleModel.figures }, null, []),
    });
  },
});
