import type { Condition } from "./types";

/** Short forms in which the rules read like sentences. */
export const has = (item: string): Condition => ({ item });
export const atLeast = (fact: string, n: number): Condition => ({ fact, atLeast: n });
export const all = (...conditions: Condition[]): Condition => ({ all: conditions });
export const any = (...conditions: Condition[]): Condition => ({ any: conditions });
export const not = (condition: Condition): Condition => ({ not: condition });
export const hasAny = (...items: string[]): Condition => any(...items.map(has));
export const hasAll = (...items: string[]): Condition => all(...items.map(has));
