import { createReadStream, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Result } from "../core/result";
import { importDynoLog } from "../dyno/import-dyno-log";
import type { ImportedSession } from "../dyno/record-session";
import type { demoWorkshop, Part } from "./demo-workshop";

export type ShippedLog = "baseline" | "proof";

function placeOf(log: ShippedLog): string {
  return fileURLToPath(new URL(`../../../../shared/demo-logs/ridgewold-${log}.csv`, import.meta.url));
}

/** A shipped log as its bytes arrive. */
export function shippedLog(log: ShippedLog): AsyncIterable<Uint8Array> {
  return createReadStream(placeOf(log));
}

/** A shipped log's lines, header first, to be spoilt in one way or another. */
export function shippedLines(log: ShippedLog): readonly string[] {
  return readFileSync(placeOf(log), "utf8").trimEnd().split("\n");
}

export function streamOf(content: string | Uint8Array): AsyncIterable<Uint8Array> {
  return (async function* () {
    yield typeof content === "string" ? new TextEncoder().encode(content) : content;
  })();
}

/** The air of the shipped logs, as their README states it. */
export const shippedAir = { barometerKPa: 99.2, airTempC: 31, relativeHumidityPct: 30 } as const;

export const usualSetUp = {
  ...shippedAir,
  code: "SAE_J1349:AUG2004",
  aspiration: "natural",
  gear: "locked-converter",
  gearRatio: 1,
  finalDrive: 3.36,
  gearboxOilTempC: 88,
  rampRpmPerS: 400,
} as const;

/** Imports into the demo workshop. `ids` finds a vehicle or job by the plate. */
export function dynoTrial(trial: ReturnType<typeof demoWorkshop>) {
  return {
    async ids(plate: string): Promise<{ vehicleId: string; jobId: string; proofOf: object }> {
      const [row] = await trial.sql(
        "select v.id as vehicle, j.id as job from vehicle v left join job j on j.vehicle_id = v.id where v.plate = $1",
        [plate],
      );
      if (!row) throw new Error(`the demo has no vehicle ${plate}`);
      const [vehicleId, jobId] = [String(row.vehicle), String(row.job)];
      return { vehicleId, jobId, proofOf: { kind: "proof", vehicleId, jobId, aspiration: "mechanical" } };
    },
    async import(
      part: Part,
      setUp: object,
      stream: AsyncIterable<Uint8Array>,
      name = "log.csv",
    ): Promise<Result<ImportedSession>> {
      return importDynoLog(await trial.as(part), { ...usualSetUp, ...setUp }, { name, stream });
    },
  };
}
