export type { Calculation } from "./calculation";
export { calculations } from "./calculations";
export type { CalculationAnswer, CalculationError } from "./run/calculation-error";
export { calculationSchema } from "./run/calculation-schema";
export { runCalculation, runCalculationText } from "./run/run-calculation";
