export { bruteForce } from "./brute-force";
export { madeWorkshop } from "./made-workshop";
export { readInstance } from "./read-instance";
export { smallModels } from "./small-models";
export { violations } from "./violations";
