import { figure } from "./document-words";

/** "350–390 kW at the hubs": never one figure alone. */
export function promiseInWords(promise: {
  readonly at: string;
  readonly lowKw: number;
  readonly highKw: number;
}): string {
  if (!(promise.lowKw > 0) || !(promise.highKw >= promise.lowKw)) {
    throw new RangeError("A power promise has a low end above 0 kW and a high end that is not below it.");
  }
  return `${figure(promise.lowKw, 0)}–${figure(promise.highKw, 0)} kW at the ${promise.at}`;
}
