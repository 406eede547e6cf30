import type { Site } from "../core/site";
import type { Catalogue } from "./catalogue-rows";
import type { FactsWith } from "./facts-with";

/** A choice to be completed, on one vehicle. */
export type CompletionBuild = {
  readonly catalogue: Catalogue;
  readonly site: Site;
  readonly modelCode: string;
  readonly chosen: readonly string[];
  readonly barred: readonly string[];
  /** Rules and groups that are known to stay open, and no longer asked for. */
  readonly leaveOpen: ReadonlySet<string>;
  /** The facts as they would be with these items: the torque is that of their own forecast. */
  readonly factsWith: FactsWith;
};
