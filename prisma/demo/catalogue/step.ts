import type { ProcedureStep } from "./types";

type Extra = Pick<ProcedureStep, "cautions" | "oneUsePart">;

export const tick = (id: string, text: string, extra: Extra = {}): ProcedureStep => ({
  id,
  text,
  kind: "tick",
  ...extra,
});

export const photo = (id: string, text: string, extra: Extra = {}): ProcedureStep => ({
  id,
  text,
  kind: "photo",
  ...extra,
});

export const serial = (id: string, text: string, extra: Extra = {}): ProcedureStep => ({
  id,
  text,
  kind: "serial",
  ...extra,
});

/** A figure to read and enter; both limits inclusive. */
export const measure = (
  id: string,
  text: string,
  unit: string,
  low: number,
  high: number,
  extra: Extra & { readonly target?: number } = {},
): ProcedureStep => ({ id, text, kind: "measurement", unit, low, high, ...extra });

/** The maker's torque in N·m with its tolerance; never worked out from thread and class. */
export const torque = (
  id: string,
  text: string,
  target: number,
  tolerance: number,
  extra: Extra = {},
): ProcedureStep => ({
  id,
  text,
  kind: "torque",
  unit: "N·m",
  low: target - tolerance,
  target,
  high: target + tolerance,
  ...extra,
});

/** Nobody goes on before a second person has looked and signed. */
export const hold = (
  id: string,
  text: string,
  extra: Extra & Pick<ProcedureStep, "signer"> = {},
): ProcedureStep => ({ id, text, kind: "hold-point", signer: "second-person", ...extra });
