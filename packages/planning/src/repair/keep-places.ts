import { headsAndTails } from "../bound/heads-and-tails";
import type { Problem } from "../model/problem";
import { Decoder } from "../schedule/decoder";

/** Rounds after which the set of tasks that must move has grown as far as it is let. */
const ROUNDS = 25;

/** Every task in its old order, no earlier than it was: the usual right shift. Null when one finds no place. */
export function inOldOrder(problem: Problem, old: Float64Array, now: number): Decoder | null {
  const board = boardFor(problem, old, now);
  board.decode(byOldStart(problem, old, () => false));
  return board.misfits === 0 ? board : null;
}

/**
 * Who can keep their place is placed first and the others go round them; whoever was pushed away all the same joins the
 * others, until no one new is pushed. Of the rounds the one that moves fewest. Null when none holds.
 */
export function fewestMoves(problem: Problem, old: Float64Array, now: number): Decoder | null {
  const moving = new Set(cannotStay(problem, boardFor(problem, old, now).floor, old));
  let best: { readonly board: Decoder; readonly moved: number } | null = null;
  for (let round = 0; round < ROUNDS; round += 1) {
    const board = boardFor(problem, old, now);
    board.decode(byOldStart(problem, old, (task) => moving.has(task)));
    const moved = problem.order.filter((task) => board.start[task] !== old[task]);
    if (board.misfits === 0 && (!best || moved.length < best.moved)) best = { board, moved: moved.length };
    const before = moving.size;
    for (const task of moved) moving.add(task);
    if (moving.size === before) break;
  }
  return best?.board ?? null;
}

/** Tasks that would begin later than they were planned even if nothing else were in the way. */
function cannotStay(problem: Problem, floor: Float64Array, old: Float64Array): readonly number[] {
  const { headEnd, head } = headsAndTails({ ...problem, release: floor });
  return problem.order.filter(
    (task) => (head[task] ?? 0) > (old[task] ?? 0) || headEnd[task] === Number.POSITIVE_INFINITY,
  );
}

/** Nothing earlier than it was promised, and nothing before now. */
function boardFor(problem: Problem, old: Float64Array, now: number): Decoder {
  const board = new Decoder(problem);
  board.floor = problem.release.map((release, task) => Math.max(release, now, old[task] ?? 0));
  return board;
}

function byOldStart(
  problem: Problem,
  old: Float64Array,
  isLast: (task: number) => boolean,
): readonly number[] {
  const rank = new Map(problem.order.map((task, at) => [task, at]));
  return [...problem.order].sort(
    (a, b) =>
      Number(isLast(a)) - Number(isLast(b)) ||
      (old[a] ?? 0) - (old[b] ?? 0) ||
      (rank.get(a) ?? 0) - (rank.get(b) ?? 0),
  );
}
