import type { DemoPerson } from "./demo-people";
import type { DemoWorkshop } from "./demo-workshop";

/** People by the first word of their name in lower case, resources by name. */
export type Staff = {
  readonly person: (firstName: string) => string;
  readonly resource: (name: string) => string;
};

export const hoists = ["Hoist 1", "Hoist 2", "Hoist 3"] as const;
export const dynoCell = "Hub dyno";

/** The workshop itself, its site, its people and what they work on. */
export function addWorkshop(
  workshop: DemoWorkshop,
  people: readonly DemoPerson[],
  passwordHash: string,
): Staff {
  const { id: workshopId, site, rows, newId, anchor } = workshop;
  const opened = new Date(anchor.getTime() - 800 * 86_400_000);
  rows.add("workshop", { id: workshopId, name: site.name, createdAt: opened });
  const { siteName, ...siteRow } = site;
  rows.add("site", { id: newId(opened), workshopId, ...siteRow, name: siteName });

  const persons = new Map<string, string>();
  for (const person of people) {
    const id = newId(opened);
    persons.set(firstName(person.name), id);
    rows.add("person", {
      id,
      workshopId,
      email: person.email,
      name: person.name,
      passwordHash,
      roles: [...person.roles],
      skills: [...person.skills],
      createdAt: opened,
    });
  }
  return {
    person: known(persons, "person"),
    resource: known(addResources(workshop, people, persons), "resource"),
  };
}

function addResources(
  { id: workshopId, rows, newId, anchor, local }: DemoWorkshop,
  people: readonly DemoPerson[],
  persons: ReadonlyMap<string, string>,
): Map<string, string> {
  const opened = new Date(anchor.getTime() - 800 * 86_400_000);
  const ids = new Map<string, string>();
  const add = (kind: "dyno" | "hoist" | "person", name: string, more: object) => {
    const id = newId(opened);
    ids.set(name, id);
    rows.add("resource", { id, workshopId, kind, name, position: ids.size, ...more });
  };
  const today = local.dayOf(anchor);
  add("dyno", dynoCell, { maxMassKg: null, inspectedUntil: today.add({ months: 5 }).toString() });
  hoists.forEach((name, index) => {
    add("hoist", name, { maxMassKg: 4_000, inspectedUntil: today.add({ months: 4 + 2 * index }).toString() });
  });
  for (const person of people) {
    if (person.roles.some((role) => role === "technician" || role === "manager")) {
      add("person", person.name, { personId: persons.get(firstName(person.name)) });
    }
  }
  return ids;
}

const firstName = (name: string) => name.split(" ")[0]?.toLowerCase() ?? name;

function known(ids: ReadonlyMap<string, string>, kind: string): (name: string) => string {
  return (name) => {
    const id = ids.get(name);
    if (id === undefined) throw new Error(`there is no ${kind} ${name} in the demo`);
    return id;
  };
}
