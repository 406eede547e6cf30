/** Where an unmet point is resolved. */
export type GatePlace = "build" | "dyno" | "quote" | "job" | "hand-over";

/** One thing that must be true before a job is booked. */
export type GatePoint = {
  /** Stable name, for overrides: `deposit`, `goods-in`, `prerequisite:plugs-for-boost`. */
  readonly point: string;
  readonly title: string;
  readonly met: boolean;
  /** How it stands, in one sentence. */
  readonly sentence: string;
  /** Who can resolve it and how; empty when met. */
  readonly resolve: string;
  readonly place: GatePlace;
  /** Keeps people from harm: never overridden. */
  readonly safety: boolean;
  readonly overridden: { readonly by: string; readonly reason: string; readonly at: string } | null;
};

type Unresolved = Omit<GatePoint, "overridden" | "safety" | "resolve"> & {
  readonly safety?: boolean;
  readonly resolve?: string;
};

export function gatePoint({ safety = false, resolve = "", ...rest }: Unresolved): GatePoint {
  return { ...rest, safety, resolve: rest.met ? "" : resolve, overridden: null };
}

/** Whether a point holds the booking back. */
export function isOpen(point: GatePoint): boolean {
  return !point.met && point.overridden === null;
}
