import type { Cluster, PreparedHold, Problem, Rows } from "./problem";
import { rowOf } from "./rows";
import { strongComponents } from "./strong-components";

export type HoldGroup = PreparedHold & { readonly span: readonly number[] };

/**
 * Which tasks have to be placed together: those of a hold, those that share a task with it, and those whose holds wait for
 * one another. Between clusters precedence has no cycle, so they can be placed one after the other.
 */
export function clustersOf(
  size: number,
  after: Rows,
  groups: readonly HoldGroup[],
): Pick<Problem, "clusters" | "clusterOf"> {
  // A task and its groups lead to each other, so a group and all that must join it are one component.
  const groupsOf = Array.from({ length: size }, (): number[] => []);
  for (const [at, { span }] of groups.entries()) for (const task of span) groupsOf[task]?.push(size + at);
  const components = strongComponents(size + groups.length, (node) =>
    node >= size
      ? (groups[node - size]?.span ?? [])
      : [...rowOf(after, node).map(([task]) => task), ...(groupsOf[node] ?? [])],
  );
  const clusterOf = new Int32Array(size).fill(-1);
  const clusters: Cluster[] = [];
  for (const component of components) {
    if (!component.some((node) => node >= size)) continue;
    const tasks = component.filter((node) => node < size).sort((a, b) => a - b);
    for (const task of tasks) clusterOf[task] = clusters.length;
    clusters.push({
      tasks,
      holds: component.flatMap((node) => groups[node - size] ?? []),
    });
  }
  return { clusters, clusterOf };
}

/** All tasks on a way from one task to another, both included; empty when there is no way. */
export function between(from: number, to: number, after: Rows, before: Rows): readonly number[] {
  const ahead = reached(from, after);
  const behind = reached(to, before);
  return ahead.has(to) ? [...ahead].filter((task) => behind.has(task)) : [];
}

function reached(first: number, rows: Rows): ReadonlySet<number> {
  const found = new Set([first]);
  for (const task of found) for (const [next] of rowOf(rows, task)) found.add(next);
  return found;
}
