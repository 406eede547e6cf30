import { massBudget } from "@buildproof/engineering";
import { type Trailer, USUAL_BALL_SHARE } from "./ball-load";
import type { ChassisItem } from "./chassis-build";
import { type ChassisFinding, kilograms } from "./finding";
import { type MassSheet, upgradedLimits } from "./mass-sheet";
import type { Masses } from "./stored-chassis";

export type TowingLimit = {
  readonly id: "tow-rating" | "combination" | "ball";
  readonly label: string;
  readonly allowedKg: number;
  /** What holds it there, where that is not the plate itself. */
  readonly heldBy: string;
  /** Null where no trailer is asked for. */
  readonly askedKg: number | null;
  readonly leftKg: number | null;
};

export type TowingSheet = {
  readonly trailer: Trailer | null;
  readonly limits: readonly TowingLimit[];
  /** The heaviest whole trailer, with brakes, that all of them allow. */
  readonly heaviestKg: number;
  readonly unbrakedTowKg: number;
  readonly findings: readonly ChassisFinding[];
};

/**
 * What may be towed with every seat taken. A trailer is told whole (ATM), so the vehicle is counted without the
 * load on its ball: that load is the trailer's, and in the combination only once.
 */
export function towingSheet(
  masses: Masses,
  items: readonly ChassisItem[],
  sheet: MassSheet,
  trailer: Trailer | null,
): TowingSheet {
  const ballKg = trailer?.ballKg ?? 0;
  const vehicleKg = sheet.travelling.massKg - ballKg;
  const plates = upgradedLimits(masses, items);
  const { gcmKg, brakedTowKg } = plates;
  // With a tow rating as high as the combination itself, only the combination holds the trailer.
  const alone = { ...plates, kerbKg: vehicleKg, addedKg: [], carriedKg: 0, brakedTowKg: gcmKg };
  const combinationKg = massBudget(alone).maxTrailerKg;
  const ball = ballLimit(masses, sheet, ballKg);
  const asked = trailer?.trailerKg ?? null;
  const limits = [
    limit("tow-rating", "Whole trailer, by the tow rating", brakedTowKg, "", asked),
    limit(
      "combination",
      `Whole trailer, by the combination of ${kilograms(gcmKg)}`,
      combinationKg,
      `the vehicle itself takes ${kilograms(vehicleKg)}`,
      asked,
    ),
    limit("ball", "On the ball", ball.allowedKg, ball.heldBy, trailer ? ballKg : null),
  ];
  const heaviestKg = Math.min(brakedTowKg, combinationKg, ball.allowedKg / USUAL_BALL_SHARE);
  return {
    trailer,
    limits,
    heaviestKg,
    unbrakedTowKg: masses.unbrakedTowKg,
    findings: trailer ? askedFindings(limits) : [standingFinding(limits, heaviestKg)],
  };
}

function limit(
  id: TowingLimit["id"],
  label: string,
  allowedKg: number,
  heldBy: string,
  askedKg: number | null,
): TowingLimit {
  return { id, label, allowedKg, heldBy, askedKg, leftKg: askedKg === null ? null : allowedKg - askedKg };
}

/** The least of the bar's limit, what the gross mass leaves, and what the rear axle takes by the lever. */
function ballLimit(masses: Masses, sheet: MassSheet, ballKg: number) {
  const lever = 1 + masses.ballBehindRearAxleMm / masses.wheelbaseMm;
  const places = [
    { allowedKg: masses.ballLimitKg, heldBy: "" },
    { allowedKg: sheet.gvmLeftKg + ballKg, heldBy: "held there by the gross vehicle mass" },
    {
      allowedKg: (sheet.travelling.rear.leftKg + ballKg * lever) / lever,
      heldBy: `held there by the rear axle, which takes ${lever.toFixed(2)} of it`,
    },
  ].sort((one, other) => one.allowedKg - other.allowedKg);
  const least = places[0] ?? { allowedKg: 0, heldBy: "" };
  // Down to the whole kilogram: an allowance is never rounded up.
  return { ...least, allowedKg: Math.max(0, Math.floor(least.allowedKg + 1e-9)) };
}

function askedFindings(limits: readonly TowingLimit[]): readonly ChassisFinding[] {
  const over = limits.filter(({ leftKg }) => leftKg !== null && leftKg < 0);
  if (over.length > 0)
    return over.map(({ id, label, leftKg, heldBy }) => ({
      id: `towing-${id}`,
      grade: "stop",
      sentence: `${label}: over by ${kilograms(-(leftKg ?? 0))}${heldBy === "" ? "" : `, ${heldBy}`}. Take a lighter trailer, or fewer people and less load.`,
    }));
  const [tightest] = [...limits].sort((one, other) => (one.leftKg ?? 0) - (other.leftKg ?? 0));
  const { label = "", leftKg = 0 } = tightest ?? {};
  return [
    {
      id: "towing",
      grade: "fit",
      sentence: `The trailer is within every limit. The tightest is “${label.toLowerCase()}”: ${kilograms(leftKg ?? 0)} left.`,
    },
  ];
}

function standingFinding(limits: readonly TowingLimit[], heaviestKg: number): ChassisFinding {
  const ball = limits.find(({ id }) => id === "ball");
  const held =
    ball && ball.allowedKg / USUAL_BALL_SHARE <= heaviestKg ? ", held by the load on the ball" : "";
  return {
    id: "towing",
    grade: heaviestKg > 0 ? "fit" : "watch",
    sentence: `No trailer is asked for. With every seat taken it may tow up to ${kilograms(heaviestKg)} whole with a tenth on the ball${held}.`,
  };
}
