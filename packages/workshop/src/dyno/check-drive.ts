import { type DriveSlip, driveSlip, explainDriveSlip } from "@buildproof/engineering";
import { atField } from "../core/at-field";
import { ok, type Result } from "../core/result";
import type { DynoSetUp } from "./dyno-fields";
import { refuse } from "./dyno-refusals";
import type { ObservedRun } from "./dyno-upload";

/** A gear further from 1:1 than this is another gear: mesh losses differ from gear to gear. Common practice, no source. */
const NEAR_ONE = 1.25;

/** Whether the gear that was named and its ratio go together. */
export function checkGear({ gear, gearRatio }: Pick<DynoSetUp, "gear" | "gearRatio">): Result<null> {
  const isNear = gearRatio <= NEAR_ONE && gearRatio >= 1 / NEAR_ONE;
  if (gear === "other" || isNear) return ok(null);
  return atField("gearRatio", refuse("gear-not-near-one", { ratio: gearRatio }));
}

/**
 * How well each run kept to gear and final drive; null where its log has no speed of the hubs. One other ratio in
 * every run is a matter of what was typed in, and is asked again; in a single run, it was that run's.
 */
export function checkDrive(
  { gearRatio, finalDrive }: Pick<DynoSetUp, "gearRatio" | "finalDrive">,
  runs: readonly Pick<ObservedRun, "drive">[],
): Result<readonly (DriveSlip | null)[]> {
  const slips = runs.map(({ drive }) => (drive ? driveSlip(drive, gearRatio * finalDrive) : null));
  const seen = slips.filter((slip) => slip !== null);
  const [first] = seen;
  if (first && seen.every(({ outcome }) => outcome === "another-ratio")) {
    const sentence = explainDriveSlip(first) ?? "";
    return atField("gearRatio", refuse("another-ratio", { sentence }));
  }
  return ok(slips);
}
