import type { CurrencyCode } from "@buildproof/units";
import type { CatalogueState } from "../catalogue-state";
import type { PartKind } from "../part-content";

/** What files are read against. */
export type ImportSetting = {
  readonly state: CatalogueState;
  readonly currency: CurrencyCode;
  /** What a table holds, where the person said so. */
  readonly part: PartKind | null;
};

/** A spreadsheet of this many rows is the most that is read at once. */
export const MOST_ROWS = 50_000;
