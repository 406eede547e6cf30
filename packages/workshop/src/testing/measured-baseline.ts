import { newId } from "../core/new-id";
import type { nextNumber } from "../core/next-number";
import { demoNow } from "./demo-moment";

type Tx = Parameters<typeof nextNumber>[0];

type Measured = {
  readonly workshopId: string;
  readonly vehicleId: string;
  readonly buildId: string;
  /** The peak of each run; three that agree unless said otherwise. */
  readonly peaksKw?: readonly number[];
  readonly factorValid?: boolean;
};

const SPEEDS_RPM = [2_000, 3_000, 4_000, 5_000, 6_000];
const RADIANS_PER_S_PER_RPM = Math.PI / 30;

/** A baseline as an imported log leaves it, on a coarse grid: enough for runs to agree or not. */
export async function measureBaseline(
  tx: Tx,
  { workshopId, vehicleId, buildId, peaksKw = [261, 262, 261.5], factorValid = true }: Measured,
): Promise<void> {
  const dynoSessionId = newId();
  await tx.dynoSession.create({
    data: {
      id: dynoSessionId,
      workshopId,
      vehicleId,
      buildId,
      kind: "baseline",
      standard: "SAE_J1349",
      edition: "AUG2004",
      barometerKPa: 99.2,
      airTempC: 31,
      relativeHumidityPct: 30,
      factor: 1.01,
      factorValid,
      gear: "locked-converter",
      gearboxOilTempC: 88,
      rampRpmPerS: 400,
      smoothingRpm: 50,
      doneAt: new Date(demoNow.getTime() - 5 * 86_400_000),
      sourceSha256: "0".repeat(64),
      sourceName: "made-baseline.csv",
      rowCount: SPEEDS_RPM.length * peaksKw.length,
    },
  });
  await tx.dynoRun.createMany({
    data: peaksKw.map((peakKw, index) => {
      const curve = SPEEDS_RPM.map((engineRpm) => pointAt(engineRpm, peakKw));
      const torques = curve.map(({ torqueNm }) => torqueNm);
      const peakNm = Math.max(...torques);
      return {
        id: newId(),
        workshopId,
        dynoSessionId,
        number: index + 1,
        observedPeakKw: peakKw / 1.01,
        peakKw,
        peakKwAtRpm: 6_000,
        peakNm,
        peakNmAtRpm: SPEEDS_RPM[torques.indexOf(peakNm)] ?? 4_000,
        meanKw: curve.reduce((sum, { powerKw }) => sum + powerKw, 0) / curve.length,
        curve,
      };
    }),
  });
}

function pointAt(engineRpm: number, peakKw: number) {
  const powerKw = peakKw * (engineRpm / 6_000) ** 0.9;
  return { engineRpm, powerKw, torqueNm: (powerKw * 1_000) / (engineRpm * RADIANS_PER_S_PER_RPM) };
}
