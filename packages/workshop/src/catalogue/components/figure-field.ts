/** One figure that an item of some kind has, as it is asked for on a form and kept in the item's figures. */
export type FigureField = {
  /** Where it lies in the item's figures: `blower.drive.blowerPulleyMm`; a number is a place in a list. */
  readonly path: string;
  readonly label: string;
  readonly unit: string;
  readonly isRequired: boolean;
  readonly help: string;
} & (
  | { readonly kind: "number"; readonly low: number; readonly high: number }
  /** Pairs of figures as text, `1500: 0.74, 3000: 0.88`; one figure alone where it is the same all over. */
  | {
      readonly kind: "curve";
      readonly over: string;
      readonly value: string;
      readonly mayBeOne: boolean;
      readonly low: number;
      readonly high: number;
    }
  /** Whole numbers as text: `1, 2, 3`. */
  | { readonly kind: "list"; readonly low: number; readonly high: number }
  | { readonly kind: "text"; readonly like: RegExp; readonly example: string }
  | {
      readonly kind: "choice";
      readonly choices: readonly { readonly code: string; readonly name: string }[];
    }
);

export type FigureConstant = { readonly path: string; readonly value: string | number };

/** What an item is on the vehicle, with the figures that the engineering asks of it. */
export type Component = {
  readonly code: string;
  readonly name: string;
  readonly fields: readonly FigureField[];
  /** Written beside the fields of the same part of the figures, once one of those is given. */
  readonly constants: readonly FigureConstant[];
};

type Extra = { readonly isRequired?: boolean; readonly help?: string };

export function number(
  path: string,
  label: string,
  unit: string,
  [low, high]: readonly [number, number],
  { isRequired = true, help = "" }: Extra = {},
): FigureField {
  return { kind: "number", path, label, unit, low, high, isRequired, help };
}

/** A figure over engine speed. */
export function overSpeed(
  path: string,
  label: string,
  unit: string,
  [low, high]: readonly [number, number],
  { isRequired = true }: Extra = {},
): FigureField {
  const help = "One figure, or pairs of engine speed and figure: 1500: 0.74, 3000: 0.88.";
  const curve = { kind: "curve", over: "speedRpm", value: "value", mayBeOne: true } as const;
  return { ...curve, path, label, unit, low, high, isRequired, help };
}

export function component(
  code: string,
  name: string,
  fields: readonly FigureField[] = [],
  constants: Readonly<Record<string, string | number>> = {},
): Component {
  return {
    code,
    name,
    fields,
    constants: Object.entries(constants).map(([path, value]) => ({ path, value })),
  };
}

/** How much of its mass the front axle carries; half where nothing is said. */
export const axleShare = number("masses.frontAxleShare", "Share of its mass on the front axle", "", [-2, 3], {
  isRequired: false,
  help: "Half where nothing is said; above 1 ahead of the front axle, below 0 behind the rear one.",
});
