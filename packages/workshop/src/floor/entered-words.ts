import type { CardStep, StepEntered } from "./card-step";
import { figureWords } from "./limits";

/** What stands on the card for a step, in a few words. */
export function enteredWords(
  step: Pick<CardStep, "kind" | "unit">,
  { kind, value, text }: Pick<StepEntered, "kind" | "value" | "text">,
): string {
  if (kind === "signed") return "signed";
  if (kind === "photo") return "photographed";
  if (kind === "value" && value !== null) return figureWords(value, step.unit);
  return step.kind === "serial" && text !== "" ? text : "done";
}
