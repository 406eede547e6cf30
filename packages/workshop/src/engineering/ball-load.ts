import { trailerWheelMassKg } from "@buildproof/engineering";
import type { ChassisBuild } from "./chassis-build";

/** The trailer that a build is asked to tow. */
export type Trailer = {
  readonly trailerKg: number;
  readonly ballKg: number;
  /** On the trailer's own wheels: rules on its brakes go by this. */
  readonly onWheelsKg: number;
  /** The load on the ball is not known and was taken as usual. */
  readonly isBallAssumed: boolean;
};

/** Of the whole trailer, on the ball; common practice, no source. */
export const USUAL_BALL_SHARE = 0.1;

/** The heavier of the towing duty that is chosen and the trailer recorded with the vehicle. */
export function trailerOf({ items, trailerGtmKg }: Pick<ChassisBuild, "items" | "trailerGtmKg">) {
  const duties = items.flatMap(({ chassis }): Trailer[] => {
    const { trailerKg, ballKg } = chassis.masses ?? {};
    if (trailerKg === undefined) return [];
    return [told(trailerKg, ballKg ?? trailerKg * USUAL_BALL_SHARE, ballKg === undefined)];
  });
  const recorded =
    trailerGtmKg === null || trailerGtmKg <= 0 ? [] : [fromWheels(trailerGtmKg / (1 - USUAL_BALL_SHARE))];
  return [...duties, ...recorded].sort((one, other) => other.trailerKg - one.trailerKg)[0] ?? null;
}

function fromWheels(trailerKg: number): Trailer {
  return told(trailerKg, trailerKg * USUAL_BALL_SHARE, true);
}

function told(trailerKg: number, ballKg: number, isBallAssumed: boolean): Trailer {
  return { trailerKg, ballKg, onWheelsKg: trailerWheelMassKg(trailerKg, ballKg), isBallAssumed };
}
