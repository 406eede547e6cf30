import { ImpossibleInputError } from "@buildproof/units";
import type { AccessWork, LabourPlan } from "./labour-plan";

/** Each piece of access work with everything it needs, itself included. */
export type AccessClosure = ReadonlyMap<string, ReadonlySet<string>>;

/** @throws ImpossibleInputError for an unknown or doubled id, or access work that needs itself. */
export function accessClosure(plan: LabourPlan): AccessClosure {
  checkIds(plan);
  const byId = new Map(plan.access.map((work) => [work.id, work]));
  const closure = new Map<string, ReadonlySet<string>>();
  const close = (work: AccessWork, path: readonly string[]): ReadonlySet<string> => {
    const known = closure.get(work.id);
    if (known) return known;
    if (path.includes(work.id)) throw cycle([...path.slice(path.indexOf(work.id)), work.id]);
    const all = new Set([work.id]);
    for (const id of work.needs ?? []) {
      const needed = byId.get(id);
      if (needed) for (const each of close(needed, [...path, work.id])) all.add(each);
    }
    closure.set(work.id, all);
    return all;
  };
  for (const work of plan.access) close(work, []);
  return closure;
}

function checkIds({ access, operations }: LabourPlan): void {
  const accessIds = new Set(access.map(({ id }) => id));
  refuseDoubled(access, "access");
  refuseDoubled(operations, "operations");
  access.forEach(({ needs = [] }, index) => {
    refuseUnknown(needs, accessIds, `access[${index}].needs`);
  });
  operations.forEach(({ access: uses = [] }, index) => {
    refuseUnknown(uses, accessIds, `operations[${index}].access`);
  });
}

function refuseDoubled(entries: readonly { readonly id: string }[], list: string): void {
  const seen = new Set<string>();
  entries.forEach(({ id }, index) => {
    if (seen.has(id)) {
      throw new ImpossibleInputError(
        "doubled-id",
        `The id "${id}" is used twice in ${list}: give each entry an id of its own.`,
        `${list}[${index}].id`,
      );
    }
    seen.add(id);
  });
}

function refuseUnknown(ids: readonly string[], known: ReadonlySet<string>, list: string): void {
  ids.forEach((id, index) => {
    if (known.has(id)) return;
    throw new ImpossibleInputError(
      "unknown-id",
      `There is no access work "${id}": add it to access or correct the id.`,
      `${list}[${index}]`,
    );
  });
}

function cycle(ids: readonly string[]): ImpossibleInputError {
  return new ImpossibleInputError(
    "cycle",
    `Access work needs itself (${ids.join(" needs ")}): remove one of these needs.`,
    "access",
  );
}
