import type { DerivedItem } from "../model/derived-item";
import type { Facts, Model } from "../model/model";
import type { Measure } from "./measures";

export type CompletionQuestion = {
  readonly model: Model;
  readonly chosen?: readonly string[] | undefined;
  readonly barred?: readonly string[] | undefined;
  readonly facts?: Facts | undefined;
  /**
   * What comes along by itself; rules may name it, answers never do, and it is no choice of its own. What the chosen
   * bring along already costs nothing more.
   */
  readonly derived?: readonly DerivedItem[] | undefined;
  /** Default price. */
  readonly minimise?: Measure | undefined;
};
