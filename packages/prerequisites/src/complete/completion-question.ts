import type { Facts, Model } from "../model/model";
import type { Measure } from "./measures";

export type CompletionQuestion = {
  readonly model: Model;
  readonly chosen?: readonly string[] | undefined;
  readonly barred?: readonly string[] | undefined;
  readonly facts?: Facts | undefined;
  /** Default price. */
  readonly minimise?: Measure | undefined;
};
