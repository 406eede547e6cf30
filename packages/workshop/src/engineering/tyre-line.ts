import { type Tyre, tyre } from "@buildproof/engineering";

/** What a designation says, with the designation itself. */
export type TyreLine = Pick<
  Tyre,
  "overallDiameterMm" | "sectionWidthMm" | "loadIndex" | "loadKg" | "speedSymbol" | "speedKmh" | "revsPerKm"
> & { readonly designation: string };

/** What the tyres have to bear. */
export type TyreDuty = {
  readonly frontRatingKg: number;
  readonly rearRatingKg: number;
  readonly topSpeedKmh: number;
};

export function tyreLine(designation: string): TyreLine {
  return { ...tyre(designation), designation };
}
