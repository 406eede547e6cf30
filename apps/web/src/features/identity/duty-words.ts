import type { Role, Skill } from "@buildproof/workshop";

export const roleWords: Record<Role, string> = {
  desk: "front desk",
  manager: "manager",
  technician: "technician",
  owner: "owner",
};

export const skillWords: Record<Skill, string> = {
  "dyno-operator": "dyno operator",
  calibrator: "calibrator",
  stores: "stores",
  "second-signatory": "second signatory",
};

/** A skill as people say it; one that the list does not know stays as it was recorded. */
export function skillInWords(skill: string): string {
  return skill in skillWords ? skillWords[skill as Skill] : skill; // The line before asked.
}

export const roleNotes: Record<Role, string> = {
  desk: "Customers, builds, quotes, deposits, hand-over.",
  manager: "The plan, the booking gate, the floor, margins of quotes.",
  technician: "The floor: steps, photos, faults, the clock.",
  owner: "Margins, discounts beyond the limit, people.",
};

export const skillNotes: Record<Skill, string> = {
  "dyno-operator": "Runs the dyno.",
  calibrator: "Writes calibrations and proves them.",
  stores: "Opens and counts parts.",
  "second-signatory": "Signs hold points of somebody else's work.",
};
