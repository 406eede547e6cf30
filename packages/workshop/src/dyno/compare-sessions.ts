import { type GainPoint, gain, type Peak } from "@buildproof/engineering";
import { codeWords } from "./dyno-fields";
import { countedRuns, type SessionRecord } from "./session-record";

/** What a proof made over its baseline, and what stands in the way of comparing the two. */
export type Comparison = {
  readonly peakPowerKw: number;
  readonly peakPowerPct: number;
  readonly peakTorqueNm: number;
  readonly observedPeakPowerKw: number;
  /** The factors differ so much that the observed gain is the honester one. */
  readonly showObservedFirst: boolean;
  readonly isDemonstrated: boolean;
  readonly baselinePeak: Peak;
  readonly proofPeak: Peak;
  readonly greatestAt: GainPoint;
  /** Why the two must not be set against each other; the gain is comparable where there is nothing here. */
  readonly obstacles: readonly string[];
  readonly cautions: readonly string[];
};

/** Oil further apart than this moves the figures by kilowatts. Common practice, no source. */
const OIL_APART_C = 10;
const RAMP_APART = 0.05;
/** Less is the same gear in other digits. */
const RATIO_APART = 0.01;

/** Null where no speed is shared, or no run counts on one side. */
export function compareSessions(baseline: SessionRecord, proof: SessionRecord): Comparison | null {
  const before = countedRuns(baseline);
  const after = countedRuns(proof);
  if (before.length === 0 || after.length === 0) return null;
  const found = gain(before, after);
  if (!found) return null;
  const { demonstrated, points: _, ...figures } = found;
  return {
    ...figures,
    isDemonstrated: demonstrated,
    obstacles: obstaclesOf(baseline, proof),
    cautions: cautionsOf(baseline, proof, figures),
  };
}

/** Ramp, gear, oil and code have to be the same before and after: each alone moves the figures by kilowatts. */
function obstaclesOf(before: SessionRecord, after: SessionRecord): readonly string[] {
  const obstacles: string[] = [];
  if (!sameCode(before, after))
    obstacles.push(
      `The baseline is corrected to ${codeOf(before)} and the proof to ${codeOf(after)}: the corrected figures do not compare.`,
    );
  if (apart(before.gearboxOilTempC, after.gearboxOilTempC) > OIL_APART_C)
    obstacles.push(
      `Gearbox oil at ${before.gearboxOilTempC ?? 0} °C before and ${after.gearboxOilTempC ?? 0} °C after: the difference alone moves the figures.`,
    );
  if (apart(before.rampRpmPerS, after.rampRpmPerS) > RAMP_APART * (before.rampRpmPerS ?? 0))
    obstacles.push(
      `Ramp of ${before.rampRpmPerS ?? 0} rpm/s before and ${after.rampRpmPerS ?? 0} after: the same ramp belongs to both.`,
    );
  if (before.gear !== after.gear)
    obstacles.push(`Before: ${before.gear}; after: ${after.gear}. The same gear belongs to both.`);
  if (apart(before.gearRatio, after.gearRatio) > RATIO_APART * (before.gearRatio ?? 0))
    obstacles.push(
      `Gear of ${before.gearRatio ?? 0} before and ${after.gearRatio ?? 0} after: the same gear belongs to both.`,
    );
  return obstacles;
}

function cautionsOf(
  before: SessionRecord,
  after: SessionRecord,
  { showObservedFirst, observedPeakPowerKw }: { showObservedFirst: boolean; observedPeakPowerKw: number },
): readonly string[] {
  const cautions: string[] = [];
  if (showObservedFirst)
    cautions.push(
      `The two factors differ by more than 0.02, so look at the observed gain first: ${observedPeakPowerKw.toFixed(0)} kW.`,
    );
  if (apart(before.finalDrive, after.finalDrive) > RATIO_APART * (before.finalDrive ?? 0))
    cautions.push(
      `Final drive of ${before.finalDrive ?? 0} before and ${after.finalDrive ?? 0} after: compare power, and torque only where it is referred to engine speed.`,
    );
  return cautions;
}

export function sameCode(before: SessionRecord, after: SessionRecord): boolean {
  return before.standard === after.standard && before.edition === after.edition;
}

export function codeOf({ standard, edition }: SessionRecord): string {
  return codeWords(standard, edition);
}

function apart(one: number | null, other: number | null): number {
  return one === null || other === null ? 0 : Math.abs(one - other);
}
