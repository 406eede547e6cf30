export { capacityUse } from "./check/capacity-use";
export type { CapacityUse, Contribution } from "./check/capacity-use-figures";
export { checkPrerequisites } from "./check/check-prerequisites";
export type { CheckResult, Finding } from "./check/finding";
export type { AddedFigures } from "./complete/added-figures";
export { type Alternative, alternativeCompletions } from "./complete/alternative-completions";
export type { Because } from "./complete/because";
export type { Clash } from "./complete/clash";
export { type Completion, completePrerequisites } from "./complete/complete-prerequisites";
export type { CompletionQuestion } from "./complete/completion-question";
export type { Measure } from "./complete/measures";
export type { Search, SearchAnswer, SearchProgram } from "./complete/search-program";
export type { Obstacle } from "./explain/obstacle";
export { type ChoiceQuestion, obstacles } from "./explain/obstacles";
export type { Reason, Step } from "./explain/reason";
export { reasonsFor } from "./explain/reasons-for";
export { type WayOut, waysOut } from "./explain/ways-out";
export { type WhyNot, whyNot } from "./explain/why-not";
export type { Fix } from "./fix/fix";
export { type FixOptions, fixAll, fixesFor } from "./fix/fixes-for";
export { type DerivedItem, derivedFrom } from "./model/derived-item";
export type {
  CapacityRule,
  Condition,
  ExcludesRule,
  Facts,
  Group,
  GroupPick,
  Item,
  Model,
  NeedsRule,
  Rule,
} from "./model/model";
export { withDerived } from "./model/with-derived";
export type {
  BuildCount,
  CatalogueProof,
  CatalogueToProve,
  LimitProof,
  PackageToProve,
  ProofFinding,
  VehiclesToProve,
} from "./proofs/catalogue-proof";
export type { FactRange, FactRanges } from "./proofs/fact-range";
export { countText, findingSentence, limitSentence, type ProofWords } from "./proofs/proof-sentence";
export { type ProofLimits, proveCatalogue } from "./proofs/prove-catalogue";
