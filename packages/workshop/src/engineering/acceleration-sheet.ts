import { type Acceleration, acceleration } from "@buildproof/engineering";
import type { RoadConditions } from "./road-assumptions";
import { inThinAir, type RoadCurve } from "./road-curve";
import type { RoadPower } from "./road-power";
import { type RoadBuild, roadQuestion } from "./road-question";
import { powerShareAt } from "./thin-air";
import type { UsedAssumption } from "./used-assumptions";
import { roadConditions, usedRoad } from "./used-road";

/** A figure that is forecast: never without its band. */
export type Band = { readonly low: number; readonly expected: number; readonly high: number };

export type AccelerationRow = {
  readonly id: "to-100" | "80-to-120" | "400-m";
  readonly label: string;
  /** Seconds; null where the speed is never reached. */
  readonly before: Band | null;
  readonly after: Band | null;
  /** After less before; far surer in seconds than either. */
  readonly difference: Band | null;
};

export type AccelerationSheet = {
  readonly rows: readonly AccelerationRow[];
  readonly isChanged: boolean;
  /** What a drag strip's clock leaves out: the time of the first foot. */
  readonly rollOut: { readonly beforeS: number; readonly afterS: number } | null;
  readonly massBeforeKg: number;
  readonly massAfterKg: number;
  /** The road that the times are told for. */
  readonly road: readonly UsedAssumption[];
  readonly assumptions: readonly string[];
};

/**
 * How far a single time may be off without the vehicle's own road data: by the seven times of the trade and the
 * open sets that docs/engineering/acceleration.md reports.
 */
const SINGLE_SHARE = 0.2;
/** As fine as the times are told. */
const NOTICED_S = 0.05;
const ONE_FOOT_M = 0.3048;
const GOALS = { targetsKmh: [80, 100, 120], distancesM: [400], rollOutM: ONE_FOOT_M } as const;

/** Full throttle from rest before and after, each as a band. For closed courses only. */
export function accelerationSheet(build: RoadBuild, power: RoadPower): AccelerationSheet {
  const before = roadQuestion(build, "standard");
  const after = roadQuestion(build, "built");
  const conditions = roadConditions(build.given, build.siteAltitudeM);
  const share = powerShareAt(conditions.roadAltitudeM, power.isDiesel);
  const run = (question: typeof before, drives: RoadCurve) =>
    fromRest(acceleration({ ...question, ...GOALS, ...inThinAir(drives, share) }));
  const standard = run(before, power.before);
  const built = power.after
    ? {
        low: run(after, power.after.low),
        expected: run(after, power.after.expected),
        high: run(after, power.after.high),
      }
    : alike(run(after, power.before));
  const rows = goalRows.map(({ of, ...row }) => {
    const was = of(standard);
    const becomes = bandOf(of(built.low), of(built.expected), of(built.high));
    return {
      ...row,
      before: was === null ? null : widened(alike(was)),
      after: becomes && widened(becomes),
      difference: was === null ? null : becomes && widenedDifference(becomes, was),
    };
  });
  return {
    rows,
    isChanged: rows.some(
      ({ difference }) => difference !== null && Math.abs(difference.expected) >= NOTICED_S,
    ),
    rollOut:
      standard.rollOutS === null || built.expected.rollOutS === null
        ? null
        : { beforeS: standard.rollOutS, afterS: built.expected.rollOutS },
    massBeforeKg: before.massKg,
    massAfterKg: after.massKg,
    road: usedRoad(build.given, build.siteAltitudeM),
    assumptions: [...power.sentences, ...assumptionsOf(build, conditions, share)],
  };
}

function alike<Value>(value: Value) {
  return { low: value, expected: value, high: value };
}

type FromRest = ReturnType<typeof fromRest>;

/** The clock starts at the end of the roll-out; told from rest, the roll-out belongs to the time. */
function fromRest({ times, distances, rollOut }: Acceleration) {
  const whole = (s: number | null | undefined) => (s == null || rollOut === null ? null : s + rollOut.s);
  const at = (kmh: number) => whole(times.find(({ targetKmh }) => targetKmh === kmh)?.s);
  const [from80, to100, to120] = [at(80), at(100), at(120)];
  return {
    to100,
    from80to120: from80 === null || to120 === null ? null : to120 - from80,
    over400mS: whole(distances[0]?.s),
    rollOutS: rollOut?.s ?? null,
  };
}

const goalRows = [
  { id: "to-100", label: "0 to 100 km/h", of: (run: FromRest) => run.to100 },
  { id: "80-to-120", label: "80 to 120 km/h", of: (run: FromRest) => run.from80to120 },
  { id: "400-m", label: "400 m from rest", of: (run: FromRest) => run.over400mS },
] as const;

/** More power is less time; where grip holds, no power helps: the ends are put in order. */
function bandOf(one: number | null, expected: number | null, other: number | null): Band | null {
  if (one === null || expected === null || other === null) return null;
  return { low: Math.min(one, expected, other), expected, high: Math.max(one, expected, other) };
}

function widened({ low, expected, high }: Band): Band {
  return { low: low * (1 - SINGLE_SHARE), expected, high: high * (1 + SINGLE_SHARE) };
}

/** What makes one time wrong makes the other wrong alike, so a difference is as sure, as a share of itself. */
function widenedDifference({ low, expected, high }: Band, before: number): Band {
  const [least, most] = [low - before, high - before];
  return {
    low: least - SINGLE_SHARE * Math.abs(least),
    expected: expected - before,
    high: most + SINGLE_SHARE * Math.abs(most),
  };
}

function assumptionsOf(
  { road, driveline }: RoadBuild,
  conditions: RoadConditions,
  share: number,
): readonly string[] {
  return [
    `Driver alone, ${roadWords(conditions)}, 25 °C at ${conditions.roadAltitudeM} m, where the engine has ${(100 * share).toFixed(1)} % of its power at sea level (SAE J1349 for spark ignition, common practice for a turbo-diesel); grip ${road.gripCoefficient}, shifts of ${driveline.shiftTimeS} s, no lift between gears.`,
    "Drag, rolling and rotating parts as the catalogue has them for the model, tyres as chosen; two per cent is taken for slip at the tyres (common practice, no source).",
    "A single time is good to about a fifth without road data of this very vehicle; what makes one time wrong makes the other wrong alike, so the difference is good to about a fifth of itself.",
  ];
}

function roadWords({ roadSlopePct, roadHeadwindKmh }: RoadConditions): string {
  const slope =
    roadSlopePct === 0
      ? "level and dry"
      : `${Math.abs(roadSlopePct)} % ${roadSlopePct > 0 ? "uphill" : "downhill"}, dry`;
  if (roadHeadwindKmh === 0) return `${slope}, no wind`;
  return `${slope}, ${Math.abs(roadHeadwindKmh)} km/h of wind ${roadHeadwindKmh > 0 ? "ahead" : "from behind"}`;
}
