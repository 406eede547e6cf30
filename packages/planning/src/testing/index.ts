export { bruteForce } from "./brute-force";
export { readInstance } from "./read-instance";
export { smallModels } from "./small-models";
export { violations } from "./violations";
