import { z } from "zod";
import { asSystemCode, systems } from "../builds/systems";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { findComponent } from "./components/components";
import { pickWords, type WordsFor } from "./content-words";
import { itemsOfRule } from "./dangling";
import { type CatalogueParts, type PartKind, partKind, partKinds } from "./part-content";
import { readCatalogueState } from "./read-catalogue-state";
import { ruleSentence } from "./rule-sentence";
import { readModelNames, wordsFor } from "./words-for";

export type CatalogueLine = {
  readonly code: string;
  readonly name: string;
  /** What else tells it apart, in words. */
  readonly note: string;
  /** Items only: in minor units without tax. */
  readonly priceMinor: number | null;
  /** The system of the build sheet; empty for what stands on none. */
  readonly system: string;
  readonly component: string;
  readonly kind: string;
  readonly fits: readonly string[];
};

/** One part of the catalogue as it stands, narrowed by system, component, vehicle model, kind and words. */
export const listCatalogue = query({
  name: "catalogue.list",
  permission: "catalogue:read",
  input: z.strictObject({
    part: partKind.default("item"),
    search: z.string().trim().max(100, "Search for at most 100 characters.").default(""),
    system: z.string().default(""),
    component: z.string().default(""),
    kind: z.string().default(""),
    model: z.string().default(""),
  }),
  async run({ tx, person }, input) {
    const state = await readCatalogueState(tx);
    const on = await wordsFor(tx, person, state);
    const all = linesOf[input.part](state.parts, on);
    const wanted = input.search.toLowerCase().split(/\s+/).filter(Boolean);
    const lines = all.filter(
      (line) =>
        (input.system === "" || line.system === input.system) &&
        (input.component === "" || line.component === input.component) &&
        (input.kind === "" || line.kind === input.kind) &&
        (input.model === "" || line.fits.length === 0 || line.fits.includes(input.model)) &&
        wanted.every((word) => `${line.name} ${line.note} ${line.code}`.toLowerCase().includes(word)),
    );
    const models = await readModelNames(tx);
    return ok({
      lines,
      of: all.length,
      currency: on.currency,
      counts: Object.fromEntries(partKinds.map((part) => [part, state.parts[part].size])),
      systems: systems.map(({ code, name }) => ({ code, name })),
      components: used(all.map(({ component }) => component)).flatMap((code) => findComponent(code) ?? []),
      kinds: used(all.map(({ kind }) => kind)),
      models: [...models].map(([code, name]) => ({ code, name })),
    });
  },
});

type Lines = (parts: CatalogueParts, on: WordsFor) => readonly CatalogueLine[];

const line = (code: string, name: string, more: Partial<CatalogueLine>): CatalogueLine => ({
  code,
  name,
  note: "",
  priceMinor: null,
  system: "",
  component: "",
  kind: "",
  fits: [],
  ...more,
});

const linesOf: Readonly<Record<PartKind, Lines>> = {
  item: ({ item }, { showsPrice }) =>
    [...item].map(([code, { name, system, component, kind, maker, note, priceMinor, fits }]) =>
      line(code, name, {
        system: asSystemCode(system),
        component,
        kind,
        fits,
        priceMinor: showsPrice ? priceMinor : null,
        note: `${maker}. ${note}`,
      }),
    ),
  group: ({ group }, { names }) =>
    [...group].map(([code, { name, pick, items }]) =>
      line(code, name, { kind: pick, note: `${pickWords[pick]} of ${items.map(names.item).join("; ")}` }),
    ),
  rule: ({ rule, item }, { names }) =>
    [...rule].map(([code, content]) =>
      line(code, ruleSentence(content, names), {
        note: content.because,
        kind: content.kind,
        fits: content.models,
        system: asSystemCode(item.get(itemsOfRule(content)[0] ?? "")?.system ?? "operations"),
      }),
    ),
  package: (parts) =>
    [...parts.package].map(([code, { name, outcome, models }]) =>
      line(code, name, { note: outcome, fits: models }),
    ),
  operation: ({ operation }, { names }) =>
    [...operation].map(([code, { name, hours, access, place }]) =>
      line(code, name, {
        kind: place,
        note: [`${Number(hours)} h of its own`, ...access.map(names.access)].join("; "),
      }),
    ),
  access: ({ access }, { names }) =>
    [...access].map(([code, { name, hours, needs }]) =>
      line(code, name, {
        note: [`${Number(hours)} h`, ...needs.map((each) => `after ${names.access(each)}`)].join("; "),
      }),
    ),
};

function used(values: readonly string[]): readonly string[] {
  return [...new Set(values)].filter((value) => value !== "").toSorted();
}
