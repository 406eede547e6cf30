import loadHighs from "highs";
import type { CompletionQuestion } from "../complete/completion-question";
import { LinearRows } from "./linear-rows";

/** Verdict of an independent solver: the least total of the asked measure, or null when there is none. */
export async function refereeTotal(question: CompletionQuestion): Promise<number | null> {
  const highs = await loadHighs();
  const program = programText(new LinearRows(question));
  const result = highs.solve(program, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-6 });
  if (result.Status === "Infeasible") return null;
  if (result.Status !== "Optimal") throw new Error(`The referee ended with ${result.Status}.`);
  return Math.round(result.ObjectiveValue * 1e6) / 1e6;
}

/** The rows in the text format for linear programs that HiGHS reads. */
function programText({ objective, rows, binaries, continuous }: LinearRows): string {
  const sum = (terms: Iterable<readonly [string, number]>): string =>
    [...terms].map(([name, weight]) => `${weight < 0 ? "-" : "+"} ${Math.abs(weight)} ${name}`).join(" ") ||
    "0 nothing";
  return [
    "Minimize",
    ` cost: ${sum(objective)}`,
    "Subject To",
    ...rows.map(({ terms, least }, at) => ` r${at}: ${sum(terms)} >= ${least}`),
    "Bounds",
    ...continuous.map(({ name, most }) => ` 0 <= ${name} <= ${most}`),
    " 0 <= nothing <= 0",
    "Binaries",
    ` ${binaries.join(" ")}`,
    "End",
  ].join("\n");
}
