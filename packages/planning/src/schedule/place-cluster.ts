import type { Cluster, PreparedHold } from "../model/problem";
import type { Board } from "./board";
import type { Profile } from "./profile";

/** Far more than there are gaps to try; tasks of one hold that stand in its way themselves would be moved for ever. */
const MOST_TRIES = 1_000;

type Taken = {
  readonly profile: Profile;
  readonly from: number;
  readonly to: number;
  readonly units: number;
};

/**
 * Places tasks that holds tie together. They are placed without the holds, then the holds are laid over them; where one
 * does not fit, its first task moves behind what is in its way and all are placed again. False when there is no place.
 */
export function placeCluster(board: Board, cluster: Cluster): boolean {
  const members = new Set(cluster.tasks);
  for (const task of cluster.tasks) {
    board.placeEarlier(task, (earlier) => !members.has(earlier));
  }
  const free = cluster.tasks.filter((task) => !board.isSettled(task));
  const sequence = [...free].sort((a, b) => (board.position[a] ?? 0) - (board.position[b] ?? 0));
  const floors = new Map<PreparedHold, number>();
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const { misfits } = board;
    for (const task of free) if (board.isPlaced(task)) board.remove(task);
    for (const task of sequence) placeMember(board, task, members, cluster, floors);
    if (board.misfits > misfits) return true;
    const clash = layHolds(board, cluster);
    if (!clash) return true;
    if (board.isSettled(clash.hold.from) || clash.until === Number.POSITIVE_INFINITY) return false;
    floors.set(clash.hold, clash.until);
  }
  return false;
}

function placeMember(
  board: Board,
  task: number,
  members: ReadonlySet<number>,
  cluster: Cluster,
  floors: ReadonlyMap<PreparedHold, number>,
): void {
  if (board.isPlaced(task)) return;
  const { start, item } = board.problem.before;
  for (let at = start[task] ?? 0; at < (start[task + 1] ?? 0); at += 1) {
    const earlier = item[at] ?? 0;
    if (members.has(earlier)) placeMember(board, earlier, members, cluster, floors);
  }
  const beginning = cluster.holds.filter(({ from }) => from === task);
  let ready = board.readyAt(task);
  for (const hold of beginning) ready = Math.max(ready, floors.get(hold) ?? ready);
  for (;;) {
    const place = board.earliest(task, ready);
    // No hold is shorter than the longest way through it, so it looks ahead that far at once, unless its own are there.
    const empty = beginning.filter(({ users }) => !users.some((user) => board.isPlaced(user.task)));
    ready = empty.reduce(
      (from, { resource, leastLength, units }) =>
        board.profiles[resource]?.earliest(from, leastLength, units) ?? from,
      place,
    );
    if (ready === place) break;
  }
  board.placeAt(task, ready);
}

/** Takes what the holds keep beyond what their tasks use; or gives everything back and says which hold is in the way. */
function layHolds(
  board: Board,
  { holds }: Cluster,
): { readonly hold: PreparedHold; readonly until: number } | null {
  const taken: Taken[] = [];
  for (const hold of holds) {
    const profile = board.profiles[hold.resource];
    if (!profile) continue;
    const needed: Taken[] = [];
    let met: number | null = null;
    // Every use begins and ends a stretch, so what is used is the same all through one.
    profile.stretches(board.start[hold.from] ?? 0, board.end[hold.to] ?? 0, (from, to, free) => {
      const units = keptBeyondUse(board, hold, from);
      if (units > free) met ??= from;
      if (units > 0) needed.push({ profile, from, to, units });
    });
    if (met !== null) {
      for (const { profile: of, from, to, units } of taken) of.take(from, to, -units);
      return { hold, until: clearFrom(board, hold, met) };
    }
    for (const { from, to, units } of needed) profile.take(from, to, units);
    taken.push(...needed);
  }
  return null;
}

/** Where the way is free again behind what was met, own use left out. */
function clearFrom(board: Board, hold: PreparedHold, from: number): number {
  const profile = board.profiles[hold.resource];
  let clear: number | null = null;
  profile?.stretches(from, Number.POSITIVE_INFINITY, (at, _, free) => {
    if (clear === null && keptBeyondUse(board, hold, at) <= free) clear = Math.max(at, from);
  });
  return clear ?? Number.POSITIVE_INFINITY;
}

/** The larger of the held units and those its tasks use at an instant, less those that are counted already. */
function keptBeyondUse(board: Board, { units: held, users }: PreparedHold, instant: number): number {
  let used = 0;
  let counted = 0;
  for (const { task, units, isCountedHere } of users) {
    if ((board.start[task] ?? 0) > instant || (board.end[task] ?? 0) <= instant) continue;
    used += units;
    if (isCountedHere) counted += units;
  }
  return Math.max(held, used) - counted;
}
