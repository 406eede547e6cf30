import {
  explainFuelShortfall,
  type Fuel,
  type FuelStage,
  type FuelStageKind,
  fuelHeadroom,
  type fuelPaths,
  fuelSupply,
} from "@buildproof/engineering";
import { rpm } from "./limit-ranges";

type FuelPath = (typeof fuelPaths)[number];

/** What one stage is asked against what it gives, at the speed where it has least to spare. */
export type StageMargin = {
  readonly kind: FuelStageKind;
  readonly name: string;
  readonly speedRpm: number;
  readonly askedKgPerH: number;
  readonly givenKgPerH: number;
  /** Supply over demand, less 1. */
  readonly headroom: number;
};

export type LoadMargins = {
  readonly stages: readonly StageMargin[];
  /** The limiting stage in words. */
  readonly sentence: string;
  readonly isShort: boolean;
};

type Question = {
  readonly fuel: Fuel;
  readonly stages: readonly FuelStage[];
  readonly air: readonly { readonly speedRpm: number; readonly airMassFlowKgPerS: number }[];
  readonly sweepLambda: Curve;
  readonly sustainedLambda: Curve;
};
type Curve = readonly { readonly speedRpm: number; readonly value: number }[];

/** What each stage of the fuel system has to spare, in a sweep and under load that is held. */
export function fuelMargins(question: Question): {
  readonly sweep: LoadMargins;
  readonly sustained: LoadMargins;
} {
  const { sweep, sustained } = fuelHeadroom(question);
  return { sweep: marginsOf(question, sweep), sustained: marginsOf(question, sustained) };
}

type Load = ReturnType<typeof fuelHeadroom>["sweep"];

function marginsOf({ fuel, stages }: Question, { points, shortfall }: Load): LoadMargins {
  const margins: StageMargin[] = [];
  for (const { speedRpm, demandKgPerH } of points) {
    const supplies = fuelSupply({ fuel, speedRpm, stages }).stages;
    const branch = (path: FuelPath) =>
      Math.min(...supplies.flatMap((each) => (each.path === path ? each.fuelKgPerH : [])));
    supplies.forEach(({ kind, path, fuelKgPerH }, at) => {
      const askedKgPerH = demandKgPerH * share(path, branch);
      const headroom = fuelKgPerH / askedKgPerH - 1;
      const before = margins[at];
      if (before && before.headroom <= headroom) return;
      margins[at] = { kind, name: names[kind], speedRpm, askedKgPerH, givenKgPerH: fuelKgPerH, headroom };
    });
  }
  return { stages: margins, sentence: inWords(margins, shortfall), isShort: shortfall !== null };
}

/** Side by side, the port and the direct branch are asked in proportion to what each can pass. */
function share(path: FuelPath, branch: (path: FuelPath) => number): number {
  if (path === "series") return 1;
  const [own, other] = [branch(path), branch(path === "direct" ? "port" : "direct")];
  return Number.isFinite(other) ? own / (own + other) : 1;
}

function inWords(margins: readonly StageMargin[], shortfall: Load["shortfall"]): string {
  if (shortfall) return asSentence(explainFuelShortfall(shortfall));
  const [least] = margins.toSorted((a, b) => a.headroom - b.headroom);
  if (!least) return "No stage is known.";
  return `Enough: least to spare at the ${least.name}, ${Math.floor(100 * least.headroom)} % at ${rpm(least.speedRpm)}.`;
}

const names: Readonly<Record<FuelStageKind, string>> = {
  "tank-pump": "tank pump",
  "high-pressure-pump": "high-pressure pump",
  "port-injectors": "port injectors",
  "direct-injectors": "direct injectors and window",
};

function asSentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
