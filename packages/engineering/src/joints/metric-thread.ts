import { ImpossibleInputError } from "@buildproof/units";

/** ISO metric thread: nominal diameter and pitch in mm. */
export type MetricThread = { readonly diameterMm: number; readonly pitchMm: number };

/** Coarse pitch first, then the fine ones. @source ISO 261, from memory; ISO 898-1 names the same coarse pitches. */
const PITCHES_MM: ReadonlyMap<string, readonly [number, ...number[]]> = new Map([
  ["3", [0.5, 0.35]],
  ["4", [0.7, 0.5]],
  ["5", [0.8, 0.5]],
  ["6", [1, 0.75]],
  ["7", [1, 0.75]],
  ["8", [1.25, 1, 0.75]],
  ["10", [1.5, 1.25, 1, 0.75]],
  ["12", [1.75, 1.5, 1.25, 1]],
  ["14", [2, 1.5, 1.25, 1]],
  ["16", [2, 1.5, 1]],
  ["18", [2.5, 2, 1.5, 1]],
  ["20", [2.5, 2, 1.5, 1]],
  ["22", [2.5, 2, 1.5, 1]],
  ["24", [3, 2, 1.5, 1]],
  ["27", [3, 2, 1.5, 1]],
  ["30", [3.5, 3, 2, 1.5, 1]],
  ["33", [3.5, 3, 2, 1.5]],
  ["36", [4, 3, 2, 1.5]],
  ["39", [4, 3, 2, 1.5]],
] as const);

/**
 * Reads `M10x1.5`, or `M10` for the coarse pitch.
 *
 * @throws ImpossibleInputError naming the sizes or the pitches there are.
 */
export function metricThread(designation: string): MetricThread {
  const found = /^M\s*(\d{1,2})(?:\s*[X×]\s*(\d(?:\.\d{1,2})?))?$/.exec(designation.trim().toUpperCase());
  if (!found) {
    throw unknown(
      `"${designation}" is not a metric thread: write it as M10x1.5, or M10 for the coarse pitch.`,
    );
  }
  const [, size = "", written] = found;
  const pitches = PITCHES_MM.get(size);
  if (!pitches) {
    throw unknown(`There is no thread M${size} here: choose one of M${[...PITCHES_MM.keys()].join(", M")}.`);
  }
  const pitchMm = written === undefined ? pitches[0] : Number(written);
  if (!pitches.includes(pitchMm)) {
    throw unknown(`M${size} has no pitch ${pitchMm}: choose ${pitches.join(", ")}.`);
  }
  return { diameterMm: Number(size), pitchMm };
}

/** Pitch diameter d₂ in mm. @source ISO 724: d − ¾·H with H = √3/2·P. */
export function pitchDiameter({ diameterMm, pitchMm }: MetricThread): number {
  return diameterMm - (3 / 8) * Math.sqrt(3) * pitchMm;
}

/**
 * Nominal stress area in mm², unrounded.
 *
 * @source  ISO 898-1: π/4·((d₂ + d₃)/2)², d₃ = d − 17/12·H.
 * @vectors shared/reference/bolt-torque.json
 */
export function stressArea(thread: MetricThread): number {
  const minor = thread.diameterMm - (17 / 24) * Math.sqrt(3) * thread.pitchMm;
  return (Math.PI / 4) * ((pitchDiameter(thread) + minor) / 2) ** 2;
}

function unknown(message: string): ImpossibleInputError {
  return new ImpossibleInputError("unknown-thread", message, "thread");
}
