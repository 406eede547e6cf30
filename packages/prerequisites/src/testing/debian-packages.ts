// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import type { Item, Model, Rule } from "../model/model";

type Fields = ReadonlyMap<string, string>;

/**
 * Debian package stanzas as a prerequisite model: each list entry of Depends and Pre-Depends is a rule
 * "needs any of", a package that provides a name counts for it, and a conflict without a version
 * excludes. Conditions on versions are about other releases than the one extracted, so they are left out.
 *
 * @source Debian Policy Manual, chapter 7 (Declaring relationships between packages).
 */
export function modelOfDebianPackages(control: string): Model {
  const packages = control.trim().split("\n\n").map(fieldsOf);
  const names = new Set(packages.map(nameOf));
  const providers = new Map<string, string[]>();
  for (const fields of packages) {
    for (const virtual of relations(fields, ["Provides"]).flat()) {
      providers.set(virtual.name, [...(providers.get(virtual.name) ?? []), nameOf(fields)]);
    }
  }
  const meant = (name: string): readonly string[] => [
    ...new Set([...(names.has(name) ? [name] : []), ...(providers.get(name) ?? [])]),
  ];
  const items = packages.map(
    (fields): Item => ({ id: nameOf(fields), price: fields.get("Installed-Size") ?? 0 }),
  );
  const rules = packages.flatMap((fields): Rule[] => {
    const when = { item: nameOf(fields) };
    const needs = relations(fields, ["Pre-Depends", "Depends"]).map((entry, at): Rule => {
      const any = entry.flatMap(({ name }) => meant(name)).map((item) => ({ item }));
      return { id: `${when.item} needs ${at}`, kind: "needs", when, then: { any } };
    });
    const unversioned = relations(fields, ["Conflicts", "Breaks"])
      .flat()
      .filter(({ versioned }) => !versioned);
    const others = new Set(unversioned.flatMap(({ name }) => meant(name)));
    others.delete(when.item);
    const excludes = [...others].map((item): Rule => {
      return { id: `${when.item} excludes ${item}`, kind: "excludes", when, then: { item } };
    });
    return [...needs, ...excludes];
  });
  return { items, rules };
}

function fieldsOf(stanza: string): Fields {
  return new Map(
    stanza.split("\n").map((line) => {
      const colon = line.indexOf(": ");
      return [line.slice(0, colon), line.slice(colon + 2)];
    }),
  );
}

function nameOf(fields: Fields): string {
  return fields.get("Package") ?? "";
}

function relations(fields: Fields, names: readonly string[]) {
  const entries = names.flatMap((name) => fields.get(name)?.split(",") ?? []);
  return entries.map((entry) =>
    entry.split("|").map((relation) => ({
      name: /^\s*([a-z0-9+.-]+)/.exec(relation)?.[1] ?? "",
      versioned: relation.includes("("),
    })),
  );
}
