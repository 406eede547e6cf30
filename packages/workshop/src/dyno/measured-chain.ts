import { z } from "zod";
import { soldChain } from "../builds/sold-chain";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import type { BuildForecast } from "../engineering/build-forecast";
import { readPromise } from "../quotes/stored-promise";
import { refuse } from "./dyno-refusals";
import { jobSessions } from "./job-sessions";
import { limitReadings } from "./limit-readings";
import { measuredEngine } from "./measured-engine";
import { type ForecastFigures, measuredLinks, weakestMeasured } from "./measured-links";
import { sessionFigures } from "./session-figures";
import { readSessions } from "./session-record";

/** A job's chain as it was quoted, and beside it what its proof showed; nothing measured before there is a proof. */
export const showMeasuredChain = query({
  name: "dyno.measured-chain",
  permission: "dyno:read",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run({ tx, now }, { jobId }) {
    const job = await tx.job.findUnique({ where: { id: jobId }, select: jobSelect });
    const sold = job && (await soldChain(tx, { jobId }, now));
    if (!job || !sold) return refuse("job-not-found");
    const { capacities, forecast } = sold;
    const { proof } = jobSessions(job, await readSessions(tx, { vehicleId: job.vehicleId }));
    const torques = capacities.filter(({ link }) => link === "gearbox" || link === "clutch");
    const engine = measuredEngine(job.vehicle.vehicleModel.figures);
    const measured = proof
      ? measuredLinks(
          { figures: sessionFigures(proof), readings: limitReadings(proof, engine) },
          torques,
          figuresOf(forecast),
          readPromise(job.version.promise),
        )
      : [];
    return ok({ capacities, measured, weakest: weakestMeasured(measured) });
  },
});

const jobSelect = {
  id: true,
  buildId: true,
  vehicleId: true,
  vehicle: { select: { vehicleModel: { select: { figures: true } } } },
  version: { select: { promise: true } },
} as const;

function figuresOf(forecast: BuildForecast): ForecastFigures | null {
  if (forecast.kind !== "forecast") return null;
  return {
    powerKw: forecast.power,
    boostKPa: forecast.boost?.kPa ?? null,
    chargeC: forecast.hottestChargeC,
  };
}
