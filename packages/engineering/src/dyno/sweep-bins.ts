import { type RunChannel, type RunRow, runChannels } from "./run-row";

/** Rows are first averaged over 10 rpm, so that a slow part of the sweep weighs no more than a fast one. */
export const BIN_RPM = 10;

/** What is averaged beside power: the channels, and the speed of the hubs that shows whether anything slipped. */
const averaged = [...runChannels, "hubRpm"] as const;

type Bin = {
  rows: number;
  rpmSum: number;
  powerSum: number;
  readonly channelSums: Float64Array;
  readonly channelRows: Float64Array;
};

/** Mean of the rows of one bin. */
export type Knot = {
  readonly engineRpm: number;
  readonly powerKw: number;
  readonly hubRpm: number | null;
} & { readonly [channel in RunChannel]: number | null };

/** One uninterrupted rise of engine speed, held as averages and not as rows. */
export class SweepBins {
  readonly #bins = new Map<number, Bin>();
  #lastIndex = Number.NaN;
  #lastBin: Bin | null = null;
  rows = 0;
  lowestRpm = Number.POSITIVE_INFINITY;
  highestRpm = Number.NEGATIVE_INFINITY;
  firstS = 0;
  lastS = 0;

  get spanRpm(): number {
    return this.rows === 0 ? 0 : this.highestRpm - this.lowestRpm;
  }

  add(row: RunRow, powerKw: number): void {
    if (this.rows === 0) this.firstS = row.timeS;
    this.lastS = row.timeS;
    this.rows += 1;
    this.lowestRpm = Math.min(this.lowestRpm, row.engineRpm);
    this.highestRpm = Math.max(this.highestRpm, row.engineRpm);

    const bin = this.#binAt(Math.floor(row.engineRpm / BIN_RPM));
    bin.rows += 1;
    bin.rpmSum += row.engineRpm;
    bin.powerSum += powerKw;
    // A plain loop: a log may have a million rows.
    let index = 0;
    for (const channel of averaged) {
      const value = row[channel];
      if (value !== undefined && Number.isFinite(value)) {
        bin.channelSums[index] = (bin.channelSums[index] ?? 0) + value;
        bin.channelRows[index] = (bin.channelRows[index] ?? 0) + 1;
      }
      index += 1;
    }
  }

  /** In the order of engine speed. */
  knots(): readonly Knot[] {
    return [...this.#bins.entries()].toSorted(([a], [b]) => a - b).map(([, bin]) => knotOf(bin));
  }

  /** The next row most often falls into the bin of the last. */
  #binAt(index: number): Bin {
    if (index !== this.#lastIndex || !this.#lastBin) {
      this.#lastIndex = index;
      this.#lastBin = this.#knownOrFresh(index);
    }
    return this.#lastBin;
  }

  #knownOrFresh(index: number): Bin {
    const known = this.#bins.get(index);
    if (known) return known;
    const fresh: Bin = {
      rows: 0,
      rpmSum: 0,
      powerSum: 0,
      channelSums: new Float64Array(averaged.length),
      channelRows: new Float64Array(averaged.length),
    };
    this.#bins.set(index, fresh);
    return fresh;
  }
}

function knotOf(bin: Bin): Knot {
  const channelMean = (channel: (typeof averaged)[number]): number | null => {
    const index = averaged.indexOf(channel);
    const rows = bin.channelRows[index] ?? 0;
    return rows === 0 ? null : (bin.channelSums[index] ?? 0) / rows;
  };
  return {
    engineRpm: bin.rpmSum / bin.rows,
    powerKw: bin.powerSum / bin.rows,
    boostKPa: channelMean("boostKPa"),
    lambda: channelMean("lambda"),
    fuelRailMPa: channelMean("fuelRailMPa"),
    intakeTempC: channelMean("intakeTempC"),
    hubRpm: channelMean("hubRpm"),
  };
}
