import { ImpossibleInputError } from "@buildproof/units";
import { Calendar } from "./calendar";
import { checkQuestion, type Names } from "./check-question";
import { clustersOf } from "./clusters";
import { latestEnds } from "./latest-ends";
import type { PlanModel, PlanTask, Span } from "./plan-question";
import { preparedHolds } from "./prepared-holds";
import type { Problem, Rows } from "./problem";
import { rowOf, rowsOf, turnedRows } from "./rows";
import { commonSpans, mergedSpans } from "./spans";
import { strongComponents } from "./strong-components";

/**
 * Reads a question into arrays and refuses what cannot be planned whatever the order.
 * @throws ImpossibleInputError unknown or doubled id, cycle, over-asked capacity, task longer than any opening
 */
export function prepare(model: PlanModel): Problem {
  const names = checkQuestion(model);
  const { tasks, resources } = model;
  const size = tasks.length;
  const before = rowsOf(
    tasks.map(({ after = [] }) => after.map(({ task, lag = 0 }) => [names.task(task), lag])),
  );
  const after = turnedRows(before, size);
  const order = inOrder(after, tasks);
  const uses = rowsOf(tasks.map((task) => usesOf(task, names)));
  const calendar = calendarsOf(model, uses);
  const duration = Float64Array.from(tasks, (task) => task.duration);
  const fixed = new Float64Array(size).fill(Number.NaN);
  for (const [id, start] of Object.entries(model.fixed ?? {})) fixed[names.task(id)] = start;
  const groups = preparedHolds(model, names, { before, after, uses, order, duration });
  return {
    size,
    order,
    duration,
    release: Float64Array.from(tasks, ({ release = 0 }) => release),
    due: Float64Array.from(tasks, ({ due = Number.POSITIVE_INFINITY }) => due),
    weight: Float64Array.from(tasks, ({ weight = 1 }) => weight),
    isSplittable: tasks.map(({ splittable = false }) => splittable),
    calendar,
    uses,
    before,
    after,
    capacity: resources.map(({ capacity }) => capacity),
    hours: resources.map(({ open }) => (open ? new Calendar(mergedSpans(open)) : null)),
    fixed,
    latestEnd: latestEnds(order, after, duration, fixed),
    ...clustersOf(size, after, groups),
    objective: model.objective ?? "makespan",
  };
}

function usesOf({ uses = {} }: PlanTask, names: Names): (readonly [number, number])[] {
  return Object.entries(uses).flatMap(([id, units]) =>
    units > 0 ? [[names.resource(id), units] as const] : [],
  );
}

function inOrder(after: Rows, tasks: readonly PlanTask[]): readonly number[] {
  const components = strongComponents(tasks.length, (task) => rowOf(after, task).map(([next]) => next));
  const self = tasks.findIndex(({ id, after: list = [] }) => list.some(({ task }) => task === id));
  const cycle = components.find(({ length }) => length > 1) ?? (self < 0 ? undefined : [self]);
  if (!cycle) return components.flat();
  const ids = cycle.map((task) => `"${tasks[task]?.id}"`).sort();
  throw new ImpossibleInputError(
    "cycle",
    `The tasks ${ids.slice(0, 10).join(", ")} wait for one another in a circle: take one of the "after" entries out.`,
    `tasks[${Math.min(...cycle)}].after`,
  );
}

/** The hours that the resources of each task share; tasks with the same resources share one calendar. */
function calendarsOf({ resources, tasks }: PlanModel, uses: Rows): readonly (Calendar | null)[] {
  const open = resources.map(({ open: spans }) => spans && mergedSpans(spans));
  const made = new Map<string, Calendar | null>();
  return tasks.map((task, at) => {
    const used = rowOf(uses, at)
      .map(([resource]) => resource)
      .filter((resource) => open[resource])
      .sort((a, b) => a - b);
    const key = used.join();
    let calendar = made.get(key);
    if (calendar === undefined) {
      const [first, ...rest] = used.flatMap((resource): (readonly Span[])[] =>
        open[resource] ? [open[resource]] : [],
      );
      calendar = first ? new Calendar(rest.reduce(commonSpans, first)) : null;
      made.set(key, calendar);
    }
    if (calendar) checkLength(task, at, calendar);
    return calendar;
  });
}

function checkLength({ id, duration, splittable = false }: PlanTask, at: number, calendar: Calendar): void {
  const most = splittable ? calendar.openTime : calendar.longestSpan;
  if (duration <= most && calendar.spans.length > 0) return;
  throw new ImpossibleInputError(
    "longer-than-any-span",
    `The task "${id}" takes ${duration} and the hours that its resources share hold ${most} ${splittable ? "in all" : "at a time"}: open them longer, shorten the task or let it be split.`,
    `tasks[${at}].duration`,
  );
}
