import { figureText } from "./figure-text";

interface FigureProps {
  readonly value: number;
  readonly unit: string;
  /** Decimals shown, kept even when zero, so that columns line up. */
  readonly decimals?: number;
  /** Writes + before a gain. */
  readonly signed?: boolean;
}

/** A number with its unit in smaller type after it. */
export function Figure({ value, unit, decimals = 0, signed = false }: FigureProps) {
  return (
    <span className="figure">
      {figureText(value, decimals, signed)}
      <span className="figure-unit">{unit}</span>
    </span>
  );
}
