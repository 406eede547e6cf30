import type { PlanModel, PlanTask, Span } from "../model/plan-question";

type Times = Readonly<Record<string, number>>;

/**
 * Everything that a schedule breaks, in words; nothing when it holds. It shares no code with the planner: it reads the
 * question as it was asked and looks at every instant at which anything changes.
 */
export function violations(model: PlanModel, start: Times, end: Times): readonly string[] {
  const found: string[] = [];
  for (const task of model.tasks) {
    const [s, e] = [start[task.id], end[task.id]];
    if (s === undefined || e === undefined || !Number.isInteger(s) || !Number.isInteger(e)) {
      found.push(`${task.id} has no whole start and end`);
      continue;
    }
    if (s < (task.release ?? 0)) found.push(`${task.id} starts before its release`);
    const settled = model.fixed?.[task.id];
    if (settled !== undefined && settled !== s) found.push(`${task.id} was moved from its fixed start`);
    for (const { task: before, lag = 0 } of task.after ?? []) {
      if (s < (end[before] ?? Number.NaN) + lag) found.push(`${task.id} starts before ${before} lets it`);
    }
    found.push(...hoursBroken(model, task, s, e));
  }
  return found.length > 0 ? found : capacityBroken(model, start, end);
}

function hoursBroken(
  { resources }: PlanModel,
  task: PlanTask,
  start: number,
  end: number,
): readonly string[] {
  const open = resources.filter(({ id, open: spans }) => spans && (task.uses?.[id] ?? 0) > 0);
  if (open.length === 0) {
    return end === start + task.duration ? [] : [`${task.id} takes another time than its duration`];
  }
  const edges = open.flatMap(({ open: spans = [] }) => spans.flat()).filter((at) => at > start && at < end);
  const instants = [...new Set([start, ...edges, end])].sort((a, b) => a - b);
  const isOpen = (instant: number): boolean =>
    open.every(({ open: spans = [] }) => spans.some(([from, to]: Span) => from <= instant && instant < to));
  if (!isOpen(start)) return [`${task.id} starts while closed`];
  let worked = 0;
  for (const [at, from] of instants.entries()) {
    const to = instants[at + 1];
    if (to === undefined) break;
    if (isOpen(from)) worked += to - from;
    else if (!task.splittable) return [`${task.id} runs into closed time`];
    else if (to === end) return [`${task.id} ends while closed`];
  }
  return worked === task.duration ? [] : [`${task.id} works ${worked} instead of ${task.duration}`];
}

function capacityBroken(
  { resources, tasks, holds = [] }: PlanModel,
  start: Times,
  end: Times,
): readonly string[] {
  const instants = [...new Set(Object.values(start))];
  const runs = (id: string, at: number): boolean => (start[id] ?? 0) <= at && at < (end[id] ?? 0);
  const between = holds.map((hold) => hold.tasks ?? pathTasks(tasks, hold.from, hold.to));
  return instants.flatMap((at) =>
    resources.flatMap(({ id, capacity }) => {
      const active = holds.flatMap((hold, index) =>
        hold.resource === id && (start[hold.from] ?? 0) <= at && at < (end[hold.to] ?? 0)
          ? [{ units: hold.units ?? 1, users: between[index] ?? [] }]
          : [],
      );
      const used = (ids: readonly string[]): number =>
        tasks
          .filter((task) => ids.includes(task.id) && runs(task.id, at))
          .reduce((sum, task) => sum + (task.uses?.[id] ?? 0), 0);
      const inside = new Set(active.flatMap(({ users }) => users));
      const outside = used(tasks.map((task) => task.id).filter((task) => !inside.has(task)));
      const held = active.reduce((sum, { units, users }) => sum + Math.max(units, used(users)), 0);
      return outside + held > capacity
        ? [`${id} is taken ${outside + held} times of ${capacity} at ${at}`]
        : [];
    }),
  );
}

function pathTasks(tasks: readonly PlanTask[], from: string, to: string): readonly string[] {
  const known = new Map<string, boolean>();
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const comesAfterFrom = (id: string): boolean => {
    const answer =
      known.get(id) ?? (id === from || (byId.get(id)?.after ?? []).some(({ task }) => comesAfterFrom(task)));
    known.set(id, answer);
    return answer;
  };
  const found = new Set<string>();
  const walk = (id: string): void => {
    if (found.has(id) || !comesAfterFrom(id)) return;
    found.add(id);
    for (const { task } of byId.get(id)?.after ?? []) walk(task);
  };
  walk(to);
  return [...found];
}
