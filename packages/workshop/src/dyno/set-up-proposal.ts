import type { Transaction } from "@buildproof/database";
import type { Aspiration } from "@buildproof/engineering";
import { z } from "zod";
import { storedDriveline } from "../engineering/stored-chassis";
import type { ChosenItem } from "../jobs/accepted-selection";
import {
  type DynoCode,
  type DynoKind,
  dynoCodes,
  type GearChoice,
  gears,
  type SetUpReading,
  setUpReadings,
} from "./dyno-fields";
import type { MeasuredEngine } from "./measured-engine";
import type { SessionRecord } from "./session-record";

/** What the import form starts with. The air is never proposed: yesterday's barometer is nobody's reading. */
export type SetUpProposal = {
  readonly kind: DynoKind;
  readonly code: DynoCode;
  readonly aspiration: Aspiration;
  readonly gear: GearChoice | null;
  /** Of the gear nearest 1:1, and of the axle, as the vehicle was measured before or left its maker. */
  readonly gearRatio: number | null;
  readonly finalDrive: number | null;
  readonly rampRpmPerS: number | null;
  readonly asksForFuel: boolean;
  readonly limits: Readonly<Record<SetUpReading, { readonly low: number; readonly high: number }>>;
};

/** The group of the catalogue whose items blow. */
const BLOWERS = "one-blower";

/** The same code, gear and ramp as before, so that like is compared with like. */
export async function proposeSetUp(
  tx: Transaction,
  vehicle: { readonly engine: MeasuredEngine; readonly figures: unknown },
  baseline: SessionRecord | null,
  chosen: readonly ChosenItem[],
): Promise<SetUpProposal> {
  const { engine } = vehicle;
  const { gearRatio, finalDrive } = driveOf(vehicle.figures);
  const isDiesel = engine.ignition === "compression";
  return {
    kind: baseline ? "proof" : "baseline",
    code: codeOfBaseline(baseline) ?? (isDiesel ? "UN_R85:R85" : "SAE_J1349:AUG2004"),
    aspiration: (await hasBlower(tx, chosen)) ? "mechanical" : engine.standardAspiration,
    gear: keyOf(gears, (words) => words === baseline?.gear),
    gearRatio: baseline?.gearRatio ?? gearRatio,
    finalDrive: baseline?.finalDrive ?? finalDrive,
    rampRpmPerS: baseline?.rampRpmPerS ?? null,
    asksForFuel: isDiesel,
    limits: setUpReadings,
  };
}

const drivenFigures = z.object({ driveline: storedDriveline });

/** The gear nearest 1:1 as the maker built it; nothing where the model's figures do not say. */
function driveOf(figures: unknown): {
  readonly gearRatio: number | null;
  readonly finalDrive: number | null;
} {
  const read = drivenFigures.safeParse(figures);
  if (!read.success) return { gearRatio: null, finalDrive: null };
  const { gearRatios, finalDrive } = read.data.driveline;
  const fromOne = (ratio: number) => Math.abs(Math.log(ratio));
  const gearRatio = gearRatios.reduce((best, ratio) => (fromOne(ratio) < fromOne(best) ? ratio : best));
  return { gearRatio, finalDrive };
}

function codeOfBaseline(baseline: SessionRecord | null): DynoCode | null {
  return keyOf(
    dynoCodes,
    ({ standard, edition }) => standard === baseline?.standard && edition === baseline.edition,
  );
}

function keyOf<Key extends string, Value>(
  table: Readonly<Record<Key, Value>>,
  matches: (value: Value) => boolean,
): Key | null {
  const keys = Object.keys(table) as Key[]; // The table has no other keys.
  return keys.find((key) => matches(table[key])) ?? null;
}

async function hasBlower(tx: Transaction, chosen: readonly ChosenItem[]): Promise<boolean> {
  if (chosen.length === 0) return false;
  const group = await tx.itemGroup.findFirst({ where: { code: BLOWERS }, select: { items: true } });
  return chosen.some(({ code }) => group?.items.includes(code) ?? false);
}
