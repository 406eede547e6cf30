import type { DriveTrace, RunPoint } from "@buildproof/engineering";
import type { IncomingFile } from "../core/file-store";

/** One run of a log, reduced to its curve and as observed: no correction is applied yet. */
export type ObservedRun = {
  readonly number: number;
  /** What the log itself calls the run. */
  readonly label: string;
  readonly points: readonly RunPoint[];
  readonly smoothingRpm: number;
  /** Mean rise of engine speed over the sweep. */
  readonly rampRpmPerS: number;
  readonly rowsUsed: number;
  /** Null where the log carries no speed of the hubs. */
  readonly drive: DriveTrace | null;
  /** What the reduction noticed, in sentences. */
  readonly warnings: readonly string[];
};

/**
 * A log that has come in whole and was found readable; its bytes wait to be kept. Where a request is
 * fingerprinted it stands for itself by its hash.
 */
export class DynoUpload {
  constructor(
    readonly name: string,
    readonly sha256: string,
    readonly sizeBytes: number,
    readonly rowCount: number,
    readonly runs: readonly ObservedRun[],
    private readonly incoming: IncomingFile,
  ) {}

  /** Makes the file the workshop's own. Call it when everything else has succeeded. */
  keep(): Promise<void> {
    return this.incoming.keep();
  }

  toJSON(): { readonly name: string; readonly sha256: string } {
    return { name: this.name, sha256: this.sha256 };
  }
}
