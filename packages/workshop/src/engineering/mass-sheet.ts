import { type AxleLoad, axleLoads, massBudget } from "@buildproof/engineering";
import type { Trailer } from "./ball-load";
import type { ChassisItem } from "./chassis-build";
import type { Masses } from "./stored-chassis";

/** What somebody weighs in the sums of payload; common practice, no source. */
export const PERSON_KG = 75;

/** Where an item sits of which the catalogue does not say: midway between the axles. */
const MIDWAY = 0.5;

export type MassLine = {
  readonly id: string;
  readonly label: string;
  readonly massKg: number;
  readonly frontKg: number;
  readonly rearKg: number;
};

export type MassSheet = {
  /** Kerb mass, what the build adds, people, load on the ball. */
  readonly lines: readonly MassLine[];
  /** What the build adds, part by part. */
  readonly added: readonly MassLine[];
  /** As it travels: every seat taken, the trailer on. */
  readonly travelling: { readonly massKg: number; readonly front: AxleLoad; readonly rear: AxleLoad };
  readonly gvmKg: number;
  readonly gvmLeftKg: number;
  /** For people, luggage and the load on the ball, and what it was as the vehicle left the factory. */
  readonly payloadKg: number;
  readonly standardPayloadKg: number;
  readonly people: number;
  /** Items counted midway between the axles, because the catalogue does not say where they sit. */
  readonly placedMidway: readonly string[];
};

/** Masses and axle loads of a build as it travels: every seat taken, with its trailer's load on the ball. */
export function massSheet(
  masses: Masses,
  items: readonly ChassisItem[],
  fittedTyre: string,
  trailer: Trailer | null,
): MassSheet {
  const { wheelbaseMm, kerbFrontKg, kerbRearKg } = masses;
  const kerbKg = kerbFrontKg + kerbRearKg;
  const parts = items.filter(({ massKg, chassis }) => massKg !== 0 && !chassis.masses?.trailerKg);
  const added = parts.map(({ code, name, massKg, chassis }) =>
    line(code, name, massKg, chassis.masses?.frontAxleShare ?? MIDWAY),
  );
  const people = masses.seatRows.map(({ seats, frontAxleShare }, row) =>
    line(`row-${row}`, "", seats * PERSON_KG, frontAxleShare),
  );
  const seats = masses.seatRows.reduce((sum, row) => sum + row.seats, 0);
  const ball = trailer
    ? [line("ball", "Trailer, on the ball", trailer.ballKg, -masses.ballBehindRearAxleMm / wheelbaseMm)]
    : [];
  const carriedKg = totalOf([...people, ...ball]);
  const upgraded = upgradedLimits(masses, items);
  const { payloadKg, vehicleKg, gvmLeftKg } = massBudget({
    ...upgraded,
    kerbKg,
    addedKg: added.map(({ massKg }) => massKg),
    carriedKg,
  });
  const { front, rear } = axleLoads({
    ...upgraded,
    wheelbaseMm,
    frontKg: kerbFrontKg,
    rearKg: kerbRearKg,
    tyre: fittedTyre,
    added: [...added, ...people, ...ball].map(({ massKg, frontKg }) => ({
      massKg,
      behindFrontAxleMm: massKg === 0 ? 0 : (1 - frontKg / massKg) * wheelbaseMm,
    })),
  });
  return {
    lines: [
      {
        id: "kerb",
        label: "Kerb mass, as standard",
        massKg: kerbKg,
        frontKg: kerbFrontKg,
        rearKg: kerbRearKg,
      },
      summed("build", "This build adds", added),
      summed("people", `${seats} people of ${PERSON_KG} kg`, people),
      ...ball,
    ],
    added,
    travelling: { massKg: vehicleKg, front, rear },
    gvmKg: upgraded.gvmKg,
    gvmLeftKg,
    payloadKg,
    standardPayloadKg: masses.gvmKg - kerbKg,
    people: seats,
    placedMidway: parts
      .filter(({ chassis }) => chassis.masses?.frontAxleShare === undefined)
      .map(({ name }) => name),
  };
}

/** Plates with the upgrades that are chosen; nothing here lifts the combination or the tow rating. */
export function upgradedLimits(masses: Masses, items: readonly ChassisItem[]) {
  const plus = (name: "gvmAddKg" | "frontRatingAddKg" | "rearRatingAddKg") =>
    items.reduce((sum, { chassis }) => sum + (chassis.masses?.[name] ?? 0), 0);
  const gvmKg = masses.gvmKg + plus("gvmAddKg");
  return {
    gvmKg,
    gcmKg: masses.gcmKg,
    brakedTowKg: masses.brakedTowKg,
    frontRatingKg: masses.frontRatingKg + plus("frontRatingAddKg"),
    rearRatingKg: masses.rearRatingKg + plus("rearRatingAddKg"),
  };
}

function line(id: string, label: string, massKg: number, frontAxleShare: number): MassLine {
  const frontKg = massKg * frontAxleShare;
  return { id, label, massKg, frontKg, rearKg: massKg - frontKg };
}

function summed(id: string, label: string, lines: readonly MassLine[]): MassLine {
  const sum = (of: (each: MassLine) => number) => lines.reduce((total, each) => total + of(each), 0);
  return {
    id,
    label,
    massKg: totalOf(lines),
    frontKg: sum(({ frontKg }) => frontKg),
    rearKg: sum(({ rearKg }) => rearKg),
  };
}

function totalOf(lines: readonly MassLine[]): number {
  return lines.reduce((total, { massKg }) => total + massKg, 0);
}
