import { type GatePoint, isOpen } from "./gate-point";

/** The points that hold a booking back. The missing time itself is left out: booking is what finds it. */
export function openPoints(gate: readonly GatePoint[]): readonly GatePoint[] {
  return gate.filter((point) => isOpen(point) && point.point !== "resources");
}
