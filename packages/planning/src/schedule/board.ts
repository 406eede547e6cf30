import type { Problem } from "../model/problem";
import type { Profile } from "./profile";

/** A schedule in the making, as placing tasks together sees it. */
export type Board = {
  readonly problem: Problem;
  readonly profiles: readonly Profile[];
  readonly start: Float64Array;
  readonly end: Float64Array;
  /** Place of each task in the list. */
  readonly position: Float64Array;
  readonly misfits: number;
  isSettled(task: number): boolean;
  isPlaced(task: number): boolean;
  placeEarlier(task: number, wanted: (task: number) => boolean): void;
  readyAt(task: number): number;
  earliest(task: number, ready: number): number;
  placeAt(task: number, start: number): void;
  remove(task: number): void;
};
