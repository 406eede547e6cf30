import { z } from "zod";

/** A stretch of work as it is typed: times on the clock of the site. */
export const workBlockInput = z.strictObject({
  resourceId: z.uuid("Choose a hoist, a technician or the dyno."),
  startsAt: z.string("Enter when it starts."),
  endsAt: z.string("Enter when it ends."),
  work: z
    .string("Say what is done in this time.")
    .trim()
    .min(2, "Say what is done in this time.")
    .max(120, "Keep the work under 120 characters."),
});

export type TypedBlock = z.output<typeof workBlockInput>;

export type ResourceKind = "dyno" | "hoist" | "person";

export type PlanResource = {
  readonly id: string;
  readonly kind: ResourceKind;
  readonly name: string;
  readonly maxMassKg: number | null;
  readonly inspectedUntil: Date | null;
  readonly personId: string | null;
  readonly person: { readonly active: boolean; readonly skills: readonly string[] } | null;
};

/** The same, as instants on a resource that exists. */
export type WorkBlock = {
  readonly resource: PlanResource;
  readonly startsAt: Date;
  readonly endsAt: Date;
  readonly work: string;
};

export function overlap(
  a: Pick<WorkBlock, "startsAt" | "endsAt">,
  b: Pick<WorkBlock, "startsAt" | "endsAt">,
) {
  return a.startsAt < b.endsAt && b.startsAt < a.endsAt;
}
