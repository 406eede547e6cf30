import type { Aspiration, Ignition } from "@buildproof/engineering";
import { z } from "zod";

const figures = z.object({ fuelKind: z.string(), aspiration: z.string(), injection: z.string() }).partial();

export type MeasuredEngine = {
  readonly ignition: Ignition;
  readonly isDirectInjected: boolean;
  /** As the maker built it. */
  readonly standardAspiration: Aspiration;
};

/** What of a vehicle's model the correction and the limits turn on. */
export function measuredEngine(modelFigures: unknown): MeasuredEngine {
  const { fuelKind, aspiration, injection } = figures.catch({}).parse(modelFigures);
  return {
    ignition: fuelKind === "diesel" ? "compression" : "spark",
    isDirectInjected: injection === "direct",
    standardAspiration: aspiration === "turbo" ? "turbo-cooled" : "natural",
  };
}
