import type { drivenAxles } from "@buildproof/engineering";
import { missing, type Part, present } from "./part";
import type { Driveline, ItemChassis, Masses, Road, TyreFigures } from "./stored-chassis";

/** An item of a build as the chassis sees it. */
export type ChassisItem = {
  readonly code: string;
  readonly name: string;
  /** Of all pieces. */
  readonly massKg: number;
  readonly chassis: ItemChassis;
};

/** A vehicle with what is chosen for it: everything that gearing, masses and road are worked out from. */
export type ChassisBuild = {
  readonly model: Part<{ readonly standardTyre: string; readonly driven: (typeof drivenAxles)[number] }>;
  readonly driveline: Part<Driveline>;
  readonly tyre: Part<TyreFigures>;
  readonly masses: Part<Masses>;
  readonly road: Part<Road>;
  readonly items: readonly ChassisItem[];
  /** Loaded mass on the wheels of the heaviest trailer; null where it tows none. */
  readonly trailerGtmKg: number | null;
  readonly alreadyFitted: string;
};

/** What the vehicle stands on, before and after. */
export type Tyres = { readonly standard: string; readonly fitted: string; readonly isChanged: boolean };

/** The tyres of a build; two sets at once are one too many. */
export function tyresOf({ model, items }: Pick<ChassisBuild, "model" | "items">): Part<Tyres> {
  if (model.missing !== null) return model;
  const { standardTyre: standard } = model.value;
  const sets = items.flatMap(({ name, chassis }) =>
    chassis.tyre?.designation ? [{ name, designation: chassis.tyre.designation }] : [],
  );
  if (sets.length > 1)
    return missing(
      `Not worked out: ${sets.map(({ name }) => name).join(" and ")} are both chosen. Take one set of tyres off the sheet.`,
    );
  const fitted = sets[0]?.designation ?? standard;
  return present({ standard, fitted, isChanged: fitted !== standard });
}

/** The final drive of a build, transfer included: as standard and as chosen. */
export function finalDrivesOf(driveline: Driveline, items: readonly ChassisItem[]) {
  const { finalDrive, transferRatio } = driveline;
  const chosen = items.findLast(({ chassis }) => chassis.driveline)?.chassis.driveline?.finalDrive;
  return { standard: finalDrive * transferRatio, fitted: (chosen ?? finalDrive) * transferRatio };
}
