export { modelOfDebianPackages } from "./debian-packages";
export { refereeTotal } from "./highs-referee";
export { madeQuestion } from "./instances";
export { completePlainly, startSolver } from "./plain-solver";
