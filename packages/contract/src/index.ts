export type { Calculation } from "./calculation";
export { calculations } from "./calculations";
export type { CalculationAnswer, CalculationError } from "./run/calculation-error";
export { calculationSchema } from "./run/calculation-schema";
export { readWithin, WITHIN_SENTENCE } from "./run/read-within";
export { runCalculation, runCalculationText } from "./run/run-calculation";
