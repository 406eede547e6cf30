import type { Transaction } from "@buildproof/database";
import { clingoSearch } from "@buildproof/prerequisites/solver";
import { z } from "zod";
import { atField } from "../core/at-field";
import type { Context } from "../core/context";
import { perform } from "../core/perform";
import { ok, type Result } from "../core/result";
import { query } from "../core/use-case";
import { storedItem } from "../engineering/stored-chassis";
import { readSelection } from "../quotes/stored-selection";
import { refuseBuild } from "./build-refusals";
import { fuelDuty } from "./fuel-duty";
import { type GoalStart, goalStarts } from "./goal-starts";
import { byGoal, type Goal, type GoalWay, goalWay } from "./goal-way";
import type { notFitting } from "./prerequisite-model";
import { readGround } from "./read-build-sheet";

const WITHIN_MS = 8_000;
const MOST_PAST_BUILDS = 40;
const MOST_SHOWN = 12;

const input = z.strictObject({
  vehicleId: z.uuid("Choose the vehicle first."),
  powerKw: z
    .number("Enter the power in kilowatts, or leave it empty.")
    .positive("Enter a power above zero, or leave it empty.")
    .max(2_000, "No build reaches more than 2,000 kW; check the unit.")
    .nullable(),
  towKg: z
    .number("Enter the trailer's mass in kilograms, or leave it empty.")
    .positive("Enter a mass above zero, or leave it empty.")
    .max(10_000, "Enter the mass in kilograms, at most 10,000.")
    .nullable(),
  by: z.iso.date("Enter the date as year-month-day, or leave it empty.").nullable(),
  budgetMinor: z
    .number("Enter the amount in figures, or leave it empty.")
    .int("Enter the amount with at most two decimals.")
    .positive("Enter an amount above zero, or leave it empty.")
    .max(1e11, "That amount is too large; check the decimals.")
    .nullable(),
});

/** Reads the vehicle and everything that a way to a goal can start from; the search itself holds no transaction. */
export const readForGoal = query({
  name: "builds.goal",
  permission: "builds:read",
  input,
  async run({ tx, now }, goal) {
    const vehicle = await tx.vehicle.findUnique({
      where: { id: goal.vehicleId },
      include: { vehicleModel: true },
    });
    if (!vehicle) return refuseBuild("vehicle-not-found");
    const { powerKw, towKg, by, budgetMinor } = goal;
    if ([powerKw, towKg, by, budgetMinor].every((each) => each === null))
      return atField("powerKw", refuseBuild("goal-empty"));
    const ground = await readGround(tx, { vehicle, assumptions: {} }, now);
    if (by !== null && by < ground.today)
      return atField("by", refuseBuild("wanted-by-past", { today: ground.today }));
    const { code: modelCode, name: modelName } = vehicle.vehicleModel;
    const towing = towKg === null ? [] : towingDuty(ground.catalogue.items, modelCode, towKg);
    if (towing === null) return atField("towKg", refuseBuild("goal-tow-too-heavy", { model: modelName }));
    return ok({
      modelCode,
      modelName,
      plate: vehicle.plate,
      ground,
      duties: [...towing, ...fuelDuty(ground.catalogue, vehicle.fuelKind, modelCode)],
      starts: [...goalStarts(ground.catalogue, modelCode), ...(await pastBuilds(tx, modelCode))],
      goal: { powerKw, by, budgetMinor } satisfies Goal,
    });
  },
});

export type GoalAnswer = {
  readonly ways: readonly GoalWay[];
  readonly currency: string;
  /** Ways that nothing completes on this vehicle. */
  readonly impossible: number;
  /** Ways that the time did not suffice for. */
  readonly unexamined: number;
};

/** The packages and builds that meet a goal on a vehicle, best first, each complete and by its own forecast. */
export async function findGoalWays(
  context: Context,
  asked: z.input<typeof input>,
): Promise<Result<GoalAnswer>> {
  const read = await perform(context, readForGoal, asked);
  if (!read.ok) return read;
  const { modelCode, ground, duties, starts, goal } = read.value;
  const search = clingoSearch(WITHIN_MS);
  const found = new Map<string, GoalWay>();
  let impossible = 0;
  let unexamined = 0;
  for (const start of starts) {
    const way = await goalWay({ modelCode, ground }, start, duties, goal, search);
    if (way === "impossible") impossible += 1;
    else if (way === "time-limit") unexamined += 1;
    else {
      const key = way.items.toSorted().join(" ");
      if (!found.has(key)) found.set(key, way);
    }
  }
  const ways = [...found.values()].toSorted(byGoal(goal)).slice(0, MOST_SHOWN);
  return ok({ ways, currency: ground.site.currency, impossible, unexamined });
}

/** The smallest towing duty of the catalogue that carries the trailer; null when none does. */
function towingDuty(
  items: Parameters<typeof notFitting>[0]["items"],
  modelCode: string,
  towKg: number,
): readonly string[] | null {
  const duties = items.flatMap(({ code, kind, fits, figures }) => {
    const read = storedItem.safeParse(figures);
    const trailerKg = read.success ? read.data.masses?.trailerKg : undefined;
    const isOffered = kind === "duty" && (fits.length === 0 || fits.includes(modelCode));
    return isOffered && trailerKg !== undefined && trailerKg >= towKg ? [{ code, trailerKg }] : [];
  });
  const [smallest] = duties.toSorted((a, b) => a.trailerKg - b.trailerKg);
  return smallest ? [smallest.code] : null;
}

/** What was sold and finished on other vehicles of the model, each selection once, the newest first. */
async function pastBuilds(tx: Transaction, modelCode: string): Promise<readonly GoalStart[]> {
  const jobs = await tx.job.findMany({
    where: { vehicle: { vehicleModel: { code: modelCode } }, finishedAt: { not: null } },
    orderBy: { finishedAt: "desc" },
    take: MOST_PAST_BUILDS,
    select: { number: true, version: { select: { selection: true } } },
  });
  const bySelection = new Map<string, GoalStart>();
  for (const { number, version } of jobs) {
    const items = readSelection(version.selection).items.map(({ code }) => code);
    const key = items.toSorted().join(" ");
    if (items.length === 0 || bySelection.has(key)) continue;
    bySelection.set(key, { kind: "past", name: `As job ${number}`, packageCode: null, picked: [], items });
  }
  return [...bySelection.values()];
}
