import type { JobStatus } from "../jobs/job-status";
import { isInTheBuilding } from "./working-job";

type Stay = {
  readonly startsAt: Date;
  readonly endsAt: Date;
  readonly resource: { readonly kind: "dyno" | "hoist" | "person"; readonly name: string };
};

/** Where a vehicle stands by its bookings: the hoist or dyno it holds now, in words. */
export function standsWhere(status: JobStatus, bookings: readonly Stay[], now: Date): string {
  if (status === "handedOver") return "with its owner";
  if (!isInTheBuilding(status)) return "not here yet";
  const places = bookings.filter(({ resource }) => resource.kind !== "person");
  const held = places.find(({ startsAt, endsAt }) => startsAt <= now && now < endsAt);
  if (held) return held.resource.name;
  const next = places
    .filter(({ startsAt }) => startsAt > now)
    .sort((a, b) => a.startsAt.getTime() - b.startsAt.getTime())[0];
  return next ? `in the yard, ${next.resource.name} next` : "in the yard";
}
