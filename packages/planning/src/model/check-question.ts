import { ImpossibleInputError } from "@buildproof/units";
import type { PlanModel } from "./plan-question";

/** Indices of ids; asking for one that is not there is refused with the place where it was written. */
export type Names = {
  readonly task: (id: string, path?: string) => number;
  readonly resource: (id: string, path?: string) => number;
};

/** Refuses ids that are unknown or doubled, and capacities that are over-asked by a single task or hold. */
export function checkQuestion({ resources, tasks, holds = [], fixed = {} }: PlanModel): Names {
  const names: Names = { task: namesOf("task", tasks), resource: namesOf("resource", resources) };
  const checkUnits = (resource: string, units: number, who: string, path: string): void => {
    const capacity = resources[names.resource(resource, path)]?.capacity ?? 0;
    if (units <= capacity) return;
    throw new ImpossibleInputError(
      "over-asked-capacity",
      `${who} asks for ${units} of "${resource}", which has ${capacity}: ask for less or add to its capacity.`,
      path,
    );
  };
  for (const [at, { id, uses = {}, after = [] }] of tasks.entries()) {
    for (const [resource, units] of Object.entries(uses)) {
      checkUnits(resource, units, `The task "${id}"`, `tasks[${at}].uses.${resource}`);
    }
    for (const [place, { task }] of after.entries()) names.task(task, `tasks[${at}].after[${place}].task`);
  }
  for (const [at, { resource, units = 1, from, to, tasks: users = [] }] of holds.entries()) {
    names.task(from, `holds[${at}].from`);
    names.task(to, `holds[${at}].to`);
    for (const [place, user] of users.entries()) names.task(user, `holds[${at}].tasks[${place}]`);
    checkUnits(resource, units, `The hold from "${from}" to "${to}"`, `holds[${at}].resource`);
  }
  for (const id of Object.keys(fixed)) names.task(id, `fixed.${id}`);
  return names;
}

function namesOf(kind: "task" | "resource", list: readonly { readonly id: string }[]) {
  const index = new Map<string, number>();
  for (const [at, { id }] of list.entries()) {
    if (index.has(id)) {
      throw new ImpossibleInputError(
        "doubled-id",
        `Two ${kind}s are called "${id}": give one of them another id.`,
        `${kind}s[${at}].id`,
      );
    }
    index.set(id, at);
  }
  return (id: string, path = ""): number => {
    const at = index.get(id);
    if (at !== undefined) return at;
    throw new ImpossibleInputError(
      "unknown-id",
      `There is no ${kind} "${id}": add it or correct the id.`,
      path,
    );
  };
}
