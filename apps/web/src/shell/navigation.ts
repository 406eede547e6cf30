import type { Role } from "@buildproof/workshop";

export interface Destination {
  readonly href: string;
  readonly title: string;
}

interface Place extends Destination {
  readonly roles: readonly Role[];
}

/** Where each role works, in the order of the job. It only shows the way: the use cases decide. */
const places: readonly Place[] = [
  { href: "/today", title: "Today", roles: ["desk", "manager", "owner"] },
  { href: "/customers", title: "Customers", roles: ["desk", "manager", "owner"] },
  { href: "/builds", title: "Builds", roles: ["desk", "manager", "owner"] },
  { href: "/quotes", title: "Quotes", roles: ["desk", "manager", "owner"] },
  { href: "/floor", title: "Floor", roles: ["manager", "technician"] },
  { href: "/jobs", title: "Jobs", roles: ["desk", "manager", "technician", "owner"] },
  { href: "/plan", title: "Plan", roles: ["desk", "manager", "owner"] },
  { href: "/dyno", title: "Dyno", roles: ["manager", "technician", "owner"] },
  { href: "/catalogue", title: "Catalogue", roles: ["desk", "manager", "technician", "owner"] },
  { href: "/owner", title: "Owner", roles: ["owner"] },
  { href: "/people", title: "People", roles: ["owner"] },
];

export function destinationsFor(roles: readonly Role[]): readonly Destination[] {
  return places
    .filter((place) => place.roles.some((role) => roles.includes(role)))
    .map(({ href, title }) => ({ href, title }));
}

/** Where a person lands after signing in. */
export function homeFor(roles: readonly Role[]): string {
  return destinationsFor(roles)[0]?.href ?? "/account";
}

export function isWithin(path: string, destination: Destination): boolean {
  return path === destination.href || path.startsWith(`${destination.href}/`);
}

const ROOM_ON_A_PHONE = 4;

/** The first few fit the foot of a phone; the rest stand behind one word. */
export function splitForPhone(all: readonly Destination[]): {
  readonly shown: readonly Destination[];
  readonly more: readonly Destination[];
} {
  if (all.length <= ROOM_ON_A_PHONE + 1) return { shown: all, more: [] };
  return { shown: all.slice(0, ROOM_ON_A_PHONE), more: all.slice(ROOM_ON_A_PHONE) };
}
