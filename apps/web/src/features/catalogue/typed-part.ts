import type { PartKind } from "@buildproof/workshop";
import { isTicked, numberOf, textOf, ticksOf } from "@/server/form-entries";

const figurePrefix = "figures.";

/** An item as its form sends it; a choice that is none of the list is left to the use case to refuse. */
export function typedItem(form: FormData) {
  const figures: Record<string, string> = {};
  for (const [name, value] of form)
    if (name.startsWith(figurePrefix) && typeof value === "string")
      figures[name.slice(figurePrefix.length)] = value;
  return {
    code: textOf(form, "code"),
    isNew: textOf(form, "isNew") === "yes",
    name: textOf(form, "name"),
    system: textOf(form, "system") as "air",
    kind: textOf(form, "kind") as "part",
    component: textOf(form, "component"),
    maker: textOf(form, "maker"),
    supplier: textOf(form, "supplier"),
    note: textOf(form, "note"),
    price: textOf(form, "price"),
    cost: textOf(form, "cost"),
    leadDays: numberOf(form, "leadDays"),
    massKg: numberOf(form, "massKg"),
    warrantyMonths: numberOf(form, "warrantyMonths"),
    returnable: isTicked(form, "returnable"),
    oneUse: isTicked(form, "oneUse"),
    serialised: isTicked(form, "serialised"),
    figures,
    fits: [...ticksOf(form, "fits")],
    operations: [...ticksOf(form, "operations")],
  };
}

/** A group, an operation or access work as its form sends it. */
export function typedPart(form: FormData) {
  const name = textOf(form, "after.name");
  const isNew = textOf(form, "isNew") === "yes";
  const head = { code: textOf(form, "code") || codeOf(name), isNew };
  const part = textOf(form, "part") as PartKind; // What is no part is refused as such.
  const hours = { hours: textOf(form, "after.hours").trim(), rate: textOf(form, "after.rate") as "workshop" };
  switch (part) {
    case "group": {
      const pick = textOf(form, "after.pick") as "at-most-one";
      return { ...head, part, after: { name, pick, items: [...ticksOf(form, "after.items")], position: 0 } };
    }
    case "access":
      return { ...head, part, after: { name, ...hours, needs: [...ticksOf(form, "after.needs")] } };
    default: {
      const after = {
        name,
        ...hours,
        access: [...ticksOf(form, "after.access")],
        place: textOf(form, "after.place"),
        skill: textOf(form, "after.skill"),
        stage: textOf(form, "after.stage"),
        position: 0,
      };
      return { ...head, part: "operation" as const, after };
    }
  }
}

function codeOf(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 60)
    .replace(/^-+|-+$/g, "");
}
