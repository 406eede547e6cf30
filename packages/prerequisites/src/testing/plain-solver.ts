/// <reference path="../solver/clingo-wasm.d.ts" />
import { restart, run } from "clingo-wasm";
import type { CompletionQuestion } from "../complete/completion-question";
import { encode } from "../complete/encode";
import { measuresOf } from "../complete/measures";
import { partProgram } from "../complete/part-program";
import { aspifOf } from "../solver/aspif";
import { narrowSums } from "../solver/narrow-sums";

/** The plainest use of the same solver, with its own settings: what became of the question. */
export async function completePlainly(question: CompletionQuestion): Promise<string> {
  return (await run(plainProgram(question), 0, [], () => {})).Result;
}

/** A new worker and its first answer. */
export async function startSolver(): Promise<string> {
  await restart();
  return (await run("asp 1 0 0\n0\n", 1, [], () => {})).Result;
}

/** A whole question about price as one program for the solver: the same objectives, nothing worked out beforehand. */
function plainProgram({ model, chosen = [], barred = [], facts = {} }: CompletionQuestion): string {
  const { items, variables, clauses, sums } = encode(model, facts);
  const places = new Map(model.items.map(({ id }, index) => [id, index + 1]));
  const given = [
    ...chosen.map((id) => places.get(id) ?? 0),
    ...barred.map((id) => -(places.get(id) ?? 0)),
  ].map((literal) => ({ origin: -1, literals: [literal] }));
  const inAnyhow = new Set(chosen);
  const measures = measuresOf(model.items.map((item) => (inAnyhow.has(item.id) ? { id: item.id } : item)));
  const { program } = partProgram(
    {
      variables: Array.from({ length: variables }, (_, at) => at + 1),
      clauses: [...given, ...clauses],
      sums,
    },
    items,
    measures,
    { levels: ["price", "hours", "leadDays", "number", "order"], leadFloor: 0n, leadCap: null },
  );
  return aspifOf(narrowSums(program), program.shown);
}
