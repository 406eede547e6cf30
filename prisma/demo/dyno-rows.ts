import {
  dynoCorrection,
  explainCorrectionWarning,
  explainVerdict,
  gain,
  type ReducedRun,
  type RunRow,
  reduceRun,
  verdict,
} from "@buildproof/engineering";
import { type HubFigures, sweepRows } from "./dyno-curve";
import type { DemoJob } from "./job-rows";
import type { DemoBuild } from "./quote-rows";
import type { Scene } from "./scene";

export type DemoSession = { readonly id: string; readonly runs: readonly ReducedRun[] };

/** Kept runs of the demo stand on a coarser grid than an imported log's: enough to draw and to compare. */
const GRID_RPM = 250;
const RUNS = 3;

type WantedSession = {
  readonly build: DemoBuild;
  readonly job?: DemoJob | undefined;
  readonly kind: "baseline" | "step" | "proof";
  readonly figures: HubFigures;
  readonly operatorId: string;
  readonly at: Date;
};

/** Makes a log, keeps it, and reduces it as an imported one would be. */
export function addDynoSession(scene: Scene, wanted: WantedSession): DemoSession {
  const { workshop, files } = scene;
  const { rows, id: workshopId, newId, random } = workshop;
  const { at, build, kind } = wanted;
  const air = airOf(scene, at);
  const correction = dynoCorrection({
    standard: "SAE_J1349",
    ignition: "spark",
    aspiration: wanted.figures.boostKPa > 0 ? "mechanical" : "natural",
    ...air,
  });
  const sweeps = Array.from({ length: RUNS }, () => sweepRows(wanted.figures, correction.factor, random));
  const runs = sweeps.map((sweep) => reduced(sweep, correction.factor, correction.valid));
  const sourceName = `made-${kind}-build-${build.number}.csv`;
  const id = newId(at);
  rows.add("dynoSession", {
    id,
    workshopId,
    vehicleId: build.vehicle.id,
    buildId: build.id,
    jobId: wanted.job?.id ?? null,
    kind,
    standard: correction.standard,
    edition: correction.edition ?? "",
    barometerKPa: air.barometerKPa,
    airTempC: air.airTempC,
    relativeHumidityPct: air.relativeHumidityPct,
    factor: correction.factor,
    factorValid: correction.valid,
    warnings: correction.warnings.map(explainCorrectionWarning),
    gear: "nearest 1:1, converter locked",
    gearboxOilTempC: random.integer(82, 93),
    rampRpmPerS: Math.round(runs[0]?.rampRpmPerS ?? 0),
    smoothingRpm: runs[0]?.smoothingRpm ?? 0,
    operatorId: wanted.operatorId,
    doneAt: at,
    sourceSha256: files.keep(workshop, sourceName, "text/csv", logOf(sweeps), at),
    sourceName,
    rowCount: sweeps.reduce((sum, sweep) => sum + sweep.length, 0),
    note: "",
  });
  runs.forEach((run, index) => {
    addRun(scene, id, index + 1, run, at);
  });
  return { id, runs };
}

function addRun({ workshop }: Scene, dynoSessionId: string, number: number, run: ReducedRun, at: Date): void {
  workshop.rows.add("dynoRun", {
    id: workshop.newId(at),
    workshopId: workshop.id,
    dynoSessionId,
    number,
    observedPeakKw: run.observedPeakPower.value,
    peakKw: run.peakPower.value,
    peakKwAtRpm: run.peakPower.engineRpm,
    peakNm: run.peakTorque.value,
    peakNmAtRpm: run.peakTorque.engineRpm,
    meanKw: run.points.reduce((sum, point) => sum + point.correctedPowerKw, 0) / run.points.length,
    curve: run.points.map((point) => ({
      engineRpm: point.engineRpm,
      powerKw: round(point.correctedPowerKw),
      torqueNm: round(point.correctedTorqueNm),
      boostKPa: round(point.boostKPa ?? 0),
      lambda: round(point.lambda ?? 0),
      fuelRailMPa: round(point.fuelRailMPa ?? 0),
      intakeTempC: round(point.intakeTempC ?? 0),
    })),
    warnings: [],
  });
}

/** Whether the proof kept what the quote promised. */
export function addVerdict(
  { workshop }: Scene,
  job: DemoJob,
  sessions: { readonly baseline: DemoSession; readonly proof: DemoSession },
  by: { readonly personId: string; readonly at: Date },
  promise: { readonly lowKw: number; readonly highKw: number },
): void {
  const { baseline, proof } = sessions;
  const found = verdict(promise, proof.runs);
  workshop.rows.add("verdict", {
    id: workshop.newId(by.at),
    workshopId: workshop.id,
    jobId: job.id,
    baselineId: baseline.id,
    proofId: proof.id,
    outcome: found.outcome === "not-demonstrated" ? "notDemonstrated" : found.outcome,
    promisedLowKw: promise.lowKw,
    promisedHighKw: promise.highKw,
    measuredKw: found.measuredKw ?? 0,
    gainKw: gain(baseline.runs, proof.runs)?.peakPowerKw ?? 0,
    spreadPct: found.repeatability?.peakSpreadPct ?? 0,
    sentence: explainVerdict(found),
    personId: by.personId,
    at: by.at,
  });
}

function reduced(sweep: readonly RunRow[], factor: number, correctionValid: boolean): ReducedRun {
  const result = reduceRun(sweep, { factor, correctionValid, gridRpm: GRID_RPM });
  if (!result.ok) throw new Error(`the made sweep cannot be reduced: ${result.refusal.code}`);
  return result.value;
}

/** Air in the cell: warm in January, cool in July, within what the correction allows. */
function airOf({ workshop }: Scene, at: Date) {
  const { random, local } = workshop;
  const season = Math.cos((2 * Math.PI * (local.dayOf(at).month - 1)) / 12);
  return {
    barometerKPa: round(random.normal(100.4, 0.5)),
    airTempC: round(Math.min(34, Math.max(16, random.normal(24 + 7 * season, 2))), 1),
    relativeHumidityPct: Math.round(Math.min(80, Math.max(15, random.normal(42 - 12 * season, 8)))),
  };
}

function logOf(sweeps: readonly (readonly RunRow[])[]): Uint8Array {
  const header =
    "run,time_s,engine_rpm,hub_power_kw,hub_torque_nm,boost_kpa,lambda,fuel_rail_mpa,intake_temp_c";
  const lines = sweeps.flatMap((sweep, index) =>
    sweep.map((row) =>
      [
        index + 1,
        row.timeS,
        row.engineRpm,
        row.hubPowerKw,
        row.hubTorqueNm,
        row.boostKPa,
        row.lambda,
        row.fuelRailMPa,
        row.intakeTempC,
      ].join(","),
    ),
  );
  return Buffer.from(`${[header, ...lines].join("\n")}\n`);
}

const round = (value: number, decimals = 3) => Number(value.toFixed(decimals));
