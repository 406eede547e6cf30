import type { Search } from "@buildproof/prerequisites";
import type { MinorUnits } from "@buildproof/units";
import { addDays, daysBetween } from "../core/site-date";
import type { Banded } from "../engineering/forecast-curve";
import { forecastOfItems } from "../engineering/forecast-of-items";
import type { GoalStart } from "./goal-starts";
import { itemByCode, ledgerOf } from "./ledger";
import { notFitting } from "./prerequisite-model";
import type { readGround } from "./read-build-sheet";
import { settleCompletion } from "./settle-completion";

/** What the owner wants, in figures; null where nothing is asked. */
export type Goal = {
  readonly powerKw: number | null;
  readonly by: string | null;
  readonly budgetMinor: number | null;
};

export type GoalMiss =
  | { readonly kind: "power"; readonly byKw: number }
  | { readonly kind: "date"; readonly byDays: number }
  | { readonly kind: "budget"; readonly byMinor: number };

/** One way to a goal, complete and judged by its own forecast. */
export type GoalWay = Omit<GoalStart, "items"> & {
  readonly items: readonly string[];
  /** Added to where it starts from. */
  readonly added: readonly string[];
  readonly power: Banded | null;
  /** The lower end of the band reaches what is asked, and not only its middle. */
  readonly isSure: boolean;
  readonly grossMinor: MinorUnits;
  readonly labourHours: number;
  readonly dynoHours: number;
  readonly readyOn: string;
  readonly misses: readonly GoalMiss[];
};

export type GoalVehicle = {
  readonly modelCode: string;
  readonly ground: Awaited<ReturnType<typeof readGround>>;
};

/** Common practice, no source: a technician's day on one vehicle. */
const HOURS_A_DAY = 7;

/**
 * A start made complete, or a word why there is none: what it asks for cannot be had on this vehicle, or the
 * time was up.
 */
export async function goalWay(
  { modelCode, ground }: GoalVehicle,
  start: GoalStart,
  duties: readonly string[],
  goal: Goal,
  search: Search,
): Promise<GoalWay | "impossible" | "time-limit"> {
  const { catalogue, site, factsWith, forecastVehicle, today } = ground;
  const barred = new Set(notFitting(catalogue, modelCode));
  const known = new Set(catalogue.items.map(({ code }) => code));
  const chosen = [...new Set([...start.items, ...duties])].filter(
    (code) => known.has(code) && !barred.has(code),
  );
  const otherDuties = catalogue.items
    .filter(({ code, kind }) => kind === "duty" && !chosen.includes(code))
    .map(({ code }) => code);
  const settled = await settleCompletion(
    {
      catalogue,
      site,
      modelCode,
      chosen,
      barred: [...new Set([...barred, ...otherDuties])],
      leaveOpen: new Set(),
      factsWith,
    },
    "price",
    search,
  );
  if (settled.add === null) return settled.status === "time-limit" ? "time-limit" : "impossible";
  const items = [...chosen, ...settled.add];
  const ledger = ledgerOf(
    catalogue,
    site,
    items.map((code) => ({ code, quantity: 1 })),
  );
  const forecast = forecastOfItems(forecastVehicle, catalogue.items, new Set(items));
  const peak =
    forecast.kind === "forecast"
      ? forecast.power
      : forecast.kind === "unchanged"
        ? forecast.asItStands
        : null;
  const power = peak && { low: peak.low, expected: peak.expected, high: peak.high };
  const { labourHours, dynoHours } = ledger;
  const readyOn = workingDaysAfter(
    addDays(today, ledger.leadDays),
    Math.ceil((labourHours + dynoHours) / HOURS_A_DAY),
  );
  const { grossMinor } = ledger.total;
  return {
    ...start,
    items,
    added: settled.add.map((code) => itemByCode(catalogue, code).name),
    power,
    isSure: goal.powerKw === null || (power !== null && power.low >= goal.powerKw),
    grossMinor,
    labourHours,
    dynoHours,
    readyOn,
    misses: missesOf(goal, { power, readyOn, grossMinor }),
  };
}

function missesOf(
  goal: Goal,
  way: { readonly power: Banded | null; readonly readyOn: string; readonly grossMinor: MinorUnits },
): readonly GoalMiss[] {
  const misses: GoalMiss[] = [];
  const shortKw = goal.powerKw === null ? 0 : goal.powerKw - (way.power?.expected ?? 0);
  if (shortKw > 0) misses.push({ kind: "power", byKw: Math.ceil(shortKw) });
  const lateDays = goal.by === null ? 0 : daysBetween(goal.by, way.readyOn);
  if (lateDays > 0) misses.push({ kind: "date", byDays: lateDays });
  const over = goal.budgetMinor === null ? 0 : way.grossMinor - goal.budgetMinor;
  if (over > 0) misses.push({ kind: "budget", byMinor: over });
  return misses;
}

/** The date on which work of some days ends, weekends left out. */
function workingDaysAfter(date: string, days: number): string {
  let day = date;
  for (let left = days; left > 0; ) {
    day = addDays(day, 1);
    const weekday = new Date(`${day}T00:00:00Z`).getUTCDay();
    if (weekday !== 0 && weekday !== 6) left -= 1;
  }
  return day;
}

/** Best first: what meets the goal, then what misses the least of it, then the cheaper. */
export function byGoal(goal: Goal): (one: GoalWay, other: GoalWay) => number {
  const rank = ({ misses }: GoalWay) =>
    misses.reduce((sum, miss) => sum + 1 + Math.min(1, shareOf(goal, miss)), 0);
  return (one, other) =>
    rank(one) - rank(other) || Number(other.isSure) - Number(one.isSure) || one.grossMinor - other.grossMinor;
}

function shareOf({ powerKw, budgetMinor }: Goal, miss: GoalMiss): number {
  if (miss.kind === "power") return miss.byKw / (powerKw || 1);
  if (miss.kind === "budget") return miss.byMinor / (budgetMinor || 1);
  return miss.byDays / 30;
}
