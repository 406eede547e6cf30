import { ImpossibleInputError } from "@buildproof/units";
import type { CorrectionEdition, CorrectionQuestion, CorrectionStandard } from "./correction-question";

const EDITIONS: Readonly<Record<CorrectionStandard, readonly CorrectionEdition[]>> = {
  SAE_J1349: ["AUG2004", "JUN1990"],
  UN_R85: ["R85", "ISO1585"],
  DIN_70020: [],
  SAE_J607: [],
};

/** The edition asked for, or the code's usual one; null where the code has no editions here. */
export function correctionEdition({
  standard,
  edition,
  ignition,
}: CorrectionQuestion): CorrectionEdition | null {
  const editions = EDITIONS[standard];
  if (edition === undefined) return editions[0] ?? null;
  if (!editions.includes(edition)) {
    const advice = editions.length === 0 ? "leave edition out" : `choose ${editions.join(" or ")}`;
    throw new ImpossibleInputError(
      "wrong-edition",
      `${standard} has no edition ${edition}: ${advice}.`,
      "edition",
    );
  }
  if (edition === "ISO1585" && ignition === "spark") {
    throw new ImpossibleInputError(
      "wrong-edition",
      "Edition ISO1585 is for compression ignition only: choose R85 for a spark-ignition engine.",
      "edition",
    );
  }
  return edition;
}
