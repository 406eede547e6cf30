import type { ActingPerson } from "../core/actor";

/** Who runs the dyno: the role opens the page, the skill starts the engine. */
export const DYNO_SKILL = "dyno-operator";

export function runsTheDyno(person: Pick<ActingPerson, "skills">): boolean {
  return person.skills.includes(DYNO_SKILL);
}
