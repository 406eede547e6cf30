/// <reference path="./clingo-wasm.d.ts" />
import type { Search, SearchAnswer, SearchProgram } from "../complete/search-program";
import { aspifOf } from "./aspif";
import { narrowSums } from "./narrow-sums";

type Clingo = typeof import("clingo-wasm");

/** Loaded when first needed, so that a command or page that never searches does not pay for it. */
const load = (): Promise<Clingo> => import("clingo-wasm");

/** Unsatisfiable cores, heavy weights first: good answers come early and lower bounds with them. */
const OPTIONS = ["--opt-strategy=usc,stratify", "--opt-usc-shrink=min"];

/** One program at a time runs in the solver's worker; the others of this process wait here. */
let turn: Promise<unknown> = Promise.resolve();

/**
 * A search in the solver's own worker thread, all of it within `withinMs` from now, the waiting for
 * others included. The solver knows no time limit: its worker is ended and the next search begins a
 * new one. A worker that dies in the middle counts as stopped, with the best it had found.
 */
export function clingoSearch(withinMs: number, cancelled?: AbortSignal): Search {
  const ends = performance.now() + withinMs;
  return (program) => {
    const answer = turn.then(() => {
      const leftMs = ends - performance.now();
      return leftMs <= 0 || cancelled?.aborted ? STOPPED : searchOnce(program, leftMs, cancelled);
    });
    turn = answer.catch(() => undefined);
    return answer;
  };
}

const STOPPED: SearchAnswer = { status: "stopped", found: null, least: 0n };

async function searchOnce(
  program: SearchProgram,
  leftMs: number,
  cancelled: AbortSignal | undefined,
): Promise<SearchAnswer> {
  const clingo = await load();
  const narrow = narrowSums(program);
  let found: readonly number[] | null = null;
  let least = 0n;
  const end = (): void => void clingo.restart();
  const timer = setTimeout(end, leftMs);
  cancelled?.addEventListener("abort", end, { once: true });
  try {
    const text = aspifOf(narrow, program.shown);
    const models = program.objectives.length > 0 ? 0 : 1;
    const { Result } = await clingo.run(text, models, OPTIONS, ({ Value = [], Lower }) => {
      if (!Lower) found = Value.map(Number);
      else if (narrow.firstDivisor) least = BigInt(Lower[0] ?? 0) * narrow.firstDivisor;
    });
    if (Result === "UNSATISFIABLE") return { status: "proven", found: null, least };
    if (Result === "OPTIMUM FOUND" || Result === "SATISFIABLE") return { status: "proven", found, least };
    await clingo.restart();
    return { status: "stopped", found, least };
  } finally {
    clearTimeout(timer);
    cancelled?.removeEventListener("abort", end);
  }
}
