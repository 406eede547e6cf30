import type { PlanModel } from "../model/plan-question";

/** A published instance: project scheduling as `.sm` (Kolisch and Sprecher 1997) or a job-shop text (OR-Library). */
export function readInstance(text: string): PlanModel {
  return text.includes("PRECEDENCE RELATIONS") ? projectOf(text) : jobShopOf(text);
}

function numbersAfter(lines: readonly string[], heading: string): number[][] {
  const first = lines.findIndex((line) => line.startsWith(heading));
  if (first < 0) throw new RangeError(`The instance has no section "${heading}".`);
  const rest = lines.slice(first + 1);
  const length = rest.findIndex((line) => line.startsWith("****"));
  return rest
    .slice(0, length < 0 ? undefined : length)
    .map((line) => line.trim().split(/\s+/).map(Number))
    .filter((row) => row.length > 1 && row.every(Number.isFinite));
}

function projectOf(text: string): PlanModel {
  const lines = text.split(/\r?\n/);
  const relations = numbersAfter(lines, "PRECEDENCE RELATIONS");
  const requests = numbersAfter(lines, "REQUESTS/DURATIONS");
  const [capacities = []] = numbersAfter(lines, "RESOURCEAVAILABILITIES");
  const before = new Map<number, number[]>();
  for (const [job = 0, , , ...next] of relations) {
    for (const later of next) before.set(later, [...(before.get(later) ?? []), job]);
  }
  return {
    resources: capacities.map((capacity, at) => ({ id: `R${at + 1}`, capacity })),
    tasks: requests.map(([job = 0, , duration = 0, ...units]) => ({
      id: String(job),
      duration,
      uses: Object.fromEntries(units.flatMap((count, at) => (count > 0 ? [[`R${at + 1}`, count]] : []))),
      after: (before.get(job) ?? []).map((task) => ({ task: String(task) })),
    })),
  };
}

function jobShopOf(text: string): PlanModel {
  const rows = text
    .split(/\r?\n/)
    .filter((line) => line.trim() !== "" && !line.startsWith("#"))
    .map((line) => line.trim().split(/\s+/).map(Number));
  const [[jobs = 0, machines = 0] = [], ...lists] = rows;
  if (lists.length < jobs) throw new RangeError("The instance has fewer rows than jobs.");
  return {
    resources: Array.from({ length: machines }, (_, at) => ({ id: `M${at}`, capacity: 1 })),
    tasks: lists.slice(0, jobs).flatMap((list, job) =>
      Array.from({ length: list.length / 2 }, (_, step) => ({
        id: `${job + 1}.${step + 1}`,
        duration: list[2 * step + 1] ?? 0,
        uses: { [`M${list[2 * step]}`]: 1 },
        after: step > 0 ? [{ task: `${job + 1}.${step}` }] : [],
      })),
    ),
  };
}
