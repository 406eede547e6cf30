import type { Role } from "./actor";

/**
 * Who may do what, in one table. `customer` is the holder of a signed link to the one version it opens.
 * An action that is not here does not exist.
 */
export const permissions = {
  "own-account": ["desk", "manager", "technician", "owner"],
  find: ["desk", "manager", "technician", "owner"],
  "customers:read": ["desk", "manager", "technician", "owner"],
  "customers:write": ["desk", "manager", "owner"],
  "builds:read": ["desk", "manager", "technician", "owner"],
  "builds:write": ["desk", "manager", "owner"],
  "catalogue:read": ["desk", "manager", "technician", "owner"],
  "catalogue:write": ["manager", "owner"],
  "engineering:assume": ["manager", "owner"],
  "inspection:record": ["manager", "technician"],
  "quotes:read": ["desk", "manager", "owner"],
  "quotes:write": ["desk", "manager", "owner"],
  "quotes:issue": ["desk", "manager", "owner"],
  "quotes:discount": ["owner"],
  "deposits:record": ["desk", "manager", "owner"],
  "refunds:record": ["owner"],
  "invoices:read": ["desk", "manager", "owner"],
  "invoices:issue": ["desk", "manager", "owner"],
  "invoices:credit": ["owner"],
  "quote-margin:read": ["manager", "owner"],
  "link:read": ["customer"],
  "link:accept": ["customer"],
  "link:ask": ["customer"],
  "jobs:read": ["desk", "manager", "technician", "owner"],
  "goods:count": ["manager", "technician"],
  "bookings:write": ["manager"],
  "gate:override": ["manager"],
  "check-in:write": ["desk", "manager", "technician"],
  "floor:read": ["manager", "technician"],
  "floor:write": ["manager", "technician"],
  "dyno:read": ["desk", "manager", "technician", "owner"],
  "dyno:write": ["manager", "technician"],
  "evidence:write": ["desk", "manager", "owner"],
  "hand-over:write": ["desk", "manager", "owner"],
  "margins:read": ["owner"],
  "margins:write": ["owner"],
  "people:write": ["owner"],
  "settings:write": ["owner"],
} as const satisfies Record<string, readonly (Role | "customer")[]>;

export type Permission = keyof typeof permissions;

export function mayDo(permission: Permission, as: readonly (Role | "customer")[]): boolean {
  const allowed: readonly string[] = permissions[permission];
  return as.some((role) => allowed.includes(role));
}
