import type { WrittenDecimal } from "@buildproof/units";

/** Teardown and refit that operations share. It counts once, with what it needs itself. */
export type AccessWork = {
  readonly id: string;
  readonly hours: WrittenDecimal;
  readonly needs?: readonly string[] | undefined;
};

export type Operation = {
  readonly id: string;
  readonly hours: WrittenDecimal;
  readonly access?: readonly string[] | undefined;
};

export type LabourPlan = {
  readonly access: readonly AccessWork[];
  readonly operations: readonly Operation[];
};

export type Labour = {
  /** ownHours + accessHours. */
  readonly hours: number;
  readonly accessHours: number;
  readonly ownHours: number;
  /** What the shared access work would cost more if each operation were sold apart. */
  readonly savedHours: number;
  readonly accessUsed: readonly string[];
};
