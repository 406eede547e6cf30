/// <reference path="./clingo-wasm.d.ts" />
import type { Search, SearchAnswer, SearchProgram } from "../complete/search-program";
import { aspifOf } from "./aspif";
import { narrowSums } from "./narrow-sums";
import { Turns } from "./turns";

type Clingo = typeof import("clingo-wasm");
type Outcome = Awaited<ReturnType<Clingo["run"]>>;

/** Loaded when first needed, so that a command or page that never searches does not pay for it. */
const load = (): Promise<Clingo> => import("clingo-wasm");

/** Unsatisfiable cores, heavy weights first: good answers come early and lower bounds with them. */
const BY_CORES = ["--opt-strategy=usc,stratify", "--opt-usc-shrink=min"];

/**
 * A small program is tried by branch and bound first, which mostly has it proven before cores are found; telling
 * of each better answer and looking for equal variables would cost more than they save.
 */
const QUICKLY = ["--opt-strategy=bb,lin", "--eq=0", "-q1", "--solve-limit=2000"];
const SMALL = 80;

/** The program is handed over on the solver's stack, which holds a mebibyte. */
const LONGEST_PROGRAM = 1_000_000;

/** One program at a time runs in the solver's worker; the others of this process wait here. */
const turns = new Turns();

/**
 * A search in the solver's own worker thread, all of it within `withinMs` from now, the waiting for
 * others included: made for one question, and safe behind a web request. The thread that asks only
 * translates; `cancelled` (a request's signal) ends the question at once, whether it waits or is being
 * searched. The solver knows no time limit: its worker is ended and the next search begins a new one. A
 * worker that dies in the middle counts as stopped, with the best it had found.
 */
export function clingoSearch(withinMs: number, cancelled?: AbortSignal): Search {
  const begun = performance.now();
  let ends = begun + withinMs;
  let isFirst = true;
  let isOver = false;
  return async (program, share = 1) => {
    if (isFirst) ends -= keptBack(performance.now() - begun, withinMs);
    isFirst = false;
    const turn = turns.take(ends, cancelled);
    try {
      if (!(await turn.begun)) return STOPPED;
      const leftMs = (ends - performance.now()) * share;
      if (isOver || leftMs <= 0) return STOPPED;
      const { hasDied, ...found } = await searchOnce(program, leftMs, cancelled);
      isOver = hasDied;
      return found;
    } finally {
      turn.leave();
    }
  };
}

/** What is done with the answer takes no longer than making the question ready; so the whole is in time. */
function keptBack(spentMs: number, withinMs: number): number {
  return Math.min(spentMs, withinMs / 4);
}

const STOPPED: SearchAnswer = { status: "stopped", found: null, least: 0n };

type Ended = SearchAnswer & {
  /** Whether the worker ended by itself, and not because its time was up. */
  readonly hasDied: boolean;
};

async function searchOnce(
  program: SearchProgram,
  leftMs: number,
  cancelled: AbortSignal | undefined,
): Promise<Ended> {
  const clingo = await load();
  const narrow = narrowSums(program);
  const text = aspifOf(narrow, program.shown);
  if (text.length > LONGEST_PROGRAM) return { ...STOPPED, hasDied: false };
  let found: readonly number[] | null = null;
  let least = 0n;
  let isEnded = false;
  const end = (): void => {
    isEnded = true;
    void clingo.restart();
  };
  const timer = setTimeout(end, leftMs);
  cancelled?.addEventListener("abort", end, { once: true });
  try {
    const models = program.objectives.length > 0 ? 0 : 1;
    const isProven = ({ Result }: Outcome): boolean =>
      Result === "UNSATISFIABLE" || Result === "OPTIMUM FOUND" || (Result === "SATISFIABLE" && models === 1);
    if (narrow.variables <= SMALL) {
      const outcome = await clingo.run(text, models, QUICKLY);
      found = lastIn(outcome);
      if (isProven(outcome)) return { status: "proven", found, least, hasDied: false };
    }
    const outcome = isEnded
      ? null
      : await clingo.run(text, models, BY_CORES, ({ Value = [], Lower }) => {
          if (!Lower) found = Value.map(Number);
          else if (narrow.firstDivisor) least = BigInt(Lower[0] ?? 0) * narrow.firstDivisor;
        });
    if (outcome && isProven(outcome)) return { status: "proven", found, least, hasDied: false };
    await clingo.restart();
    return { status: "stopped", found, least, hasDied: !isEnded };
  } finally {
    clearTimeout(timer);
    cancelled?.removeEventListener("abort", end);
  }
}

/** The best of the answers told at the end, or null when there was none. */
function lastIn({ Call = [] }: Outcome): readonly number[] | null {
  const last = Call.at(-1)?.Witnesses?.at(-1);
  return last ? (last.Value ?? []).map(Number) : null;
}
