import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { expect, test } from "vitest";
import { clingoSearch } from "../solver/clingo-search";
import { keepsPick, type ProofRow, proofTable } from "../testing/proof-table";
import { randomProof } from "../testing/random-proof";
import type {
  CatalogueProof,
  CatalogueToProve,
  Chooser,
  ProofFinding,
  VehiclesToProve,
} from "./catalogue-proof";
import { rising, tellingValues } from "./fact-range";
import { proveCatalogue } from "./prove-catalogue";

const RUNS = 1_500;

type Case = {
  readonly catalogue: CatalogueToProve;
  readonly vehicles: VehiclesToProve;
  readonly proof: CatalogueProof;
  readonly rows: readonly ProofRow[];
  /** Builds that keep every rule and group of the catalogue. */
  readonly builds: readonly ProofRow[];
};

test("whatever is proven of a catalogue is so for every build on every vehicle, and nothing is missed", {
  timeout: 120_000,
}, async () => {
  const seen = new Map<string, number>();
  await fc.assert(
    fc.asyncProperty(randomProof(6), async ({ catalogue, vehicles }) => {
      const proof = await proveCatalogue(catalogue, vehicles, clingoSearch(60_000));
      const rows = proofTable(catalogue, vehicles);
      const builds = rows.filter(({ broken }) => [...broken].every((id) => id === "further"));
      const checked = { catalogue, vehicles, proof, rows, builds };
      for (const { kind } of proof.findings) seen.set(kind, (seen.get(kind) ?? 0) + 1);
      for (const { verdict } of proof.limits) seen.set(verdict, (seen.get(verdict) ?? 0) + 1);
      if (builds.length === 0) return checkNothing(checked);
      checkItems(checked);
      checkPackages(checked);
      checkRules(checked);
      checkKeepers(checked);
      checkForced(checked);
      checkLimits(checked);
      checkCounts(checked);
    }),
    { numRuns: RUNS },
  );
  expect([...seen.keys()].sort()).toEqual([
    "exceeded",
    "forces",
    "item-never",
    "kept-by-itself",
    "kept-by-others",
    "nothing-buildable",
    "only-at-least",
    "only-below",
    "option-never",
    "package-never",
    "rule-always-kept",
    "rule-contradicted",
    "rule-never-applies",
    "set-aside",
  ]);
});

function of<K extends ProofFinding["kind"]>({ proof }: Case, kind: K) {
  return proof.findings.filter((each): each is Extract<ProofFinding, { kind: K }> => each.kind === kind);
}

/** The members rule out every one of the rows, and no fewer of them do. */
function checkClash(rows: readonly ProofRow[], ids: readonly string[]): void {
  const isLeft = (members: readonly string[]) =>
    rows.some(({ broken }) => !members.some((id) => broken.has(id)));
  expect(isLeft(ids)).toBe(false);
  for (const id of ids) expect(isLeft(ids.filter((other) => other !== id))).toBe(true);
}

function checkNothing(checked: Case): void {
  const [{ clash } = { clash: null }] = of(checked, "nothing-buildable");
  checkClash(checked.rows, [...(clash?.groups ?? []), ...(clash?.rules ?? [])]);
  expect(checked.proof.counts).toEqual([{ package: null, isExact: true, builds: 0n, ways: null }]);
}

function checkItems(checked: Case): void {
  const { catalogue, vehicles, builds, rows } = checked;
  const fitting = catalogue.model.items.map(({ id }) => id).filter((id) => !vehicles.barred?.includes(id));
  const never = of(checked, "item-never");
  expect(never.map(({ item }) => item)).toEqual(
    fitting.filter((id) => !builds.some(({ selected }) => selected.has(id))),
  );
  for (const { item, clash } of never) {
    const having = rows.filter(({ selected }) => selected.has(item));
    checkClash(having, [...(clash?.groups ?? []), ...(clash?.rules ?? [])]);
  }
}

function checkPackages(checked: Case): void {
  const { catalogue, builds } = checked;
  for (const { id, items, choices = [], options = [] } of catalogue.packages ?? []) {
    const taken = builds.filter(({ selected }) => {
      return items.every((item) => selected.has(item)) && choices.every((each) => keepsPick(each, selected));
    });
    const never = of(checked, "package-never").filter((each) => each.package === id);
    expect(never.length).toBe(taken.length === 0 ? 1 : 0);
    if (taken.length === 0) continue;
    const open = [...new Set([...choices.flatMap((each) => each.items), ...options])];
    expect(of(checked, "option-never").flatMap((each) => (each.package === id ? [each.item] : []))).toEqual(
      open.filter((item) => !taken.some(({ selected }) => selected.has(item))),
    );
  }
}

function checkRules(checked: Case): void {
  const { catalogue, rows, builds } = checked;
  for (const rule of catalogue.model.rules ?? []) {
    const only = (row: ProofRow): boolean =>
      [...row.broken].every((id) => id === rule.id || id === "further");
    const when = rule.kind === "capacity" ? undefined : rule.when;
    const applies = !when || builds.some(({ holds }) => holds(when));
    const appliesAlone = !when || rows.some((row) => only(row) && row.holds(when));
    const isBreakable = rows.some((row) => only(row) && row.broken.has(rule.id));
    const found = checked.proof.findings.find((each) => "rule" in each && each.rule === rule.id);
    if (applies) expect(found?.kind).toBe(isBreakable ? undefined : "rule-always-kept");
    else if (!appliesAlone) expect(found?.kind).toBe("rule-never-applies");
    else if (found) expect(found.kind).toBe("rule-contradicted");
    else expect(of(checked, "item-never")).not.toEqual([]);
  }
}

function checkKeepers(checked: Case): void {
  for (const { rule, by } of of(checked, "rule-always-kept")) {
    checkClash(
      checked.rows.filter(({ broken }) => broken.has(rule)),
      by ?? [],
    );
  }
  for (const { rule, clash } of of(checked, "rule-contradicted")) {
    const own = checked.catalogue.model.rules?.find(({ id }) => id === rule);
    const when = own && own.kind !== "capacity" ? own.when : undefined;
    checkClash(
      checked.rows.filter(({ holds }) => when && holds(when)),
      [...(clash?.groups ?? []), ...(clash?.rules ?? [])],
    );
  }
}

function checkForced(checked: Case): void {
  const { catalogue, builds } = checked;
  const always = inAll(builds, []);
  checkChooser(checked, null, builds, []);
  for (const { id } of catalogue.model.items) {
    checkChooser(
      checked,
      { item: id },
      builds.filter(({ selected }) => selected.has(id)),
      [id, ...always],
    );
  }
  for (const { id, items, choices = [] } of catalogue.packages ?? []) {
    const taken = builds.filter(({ selected }) => {
      return items.every((item) => selected.has(item)) && choices.every((each) => keepsPick(each, selected));
    });
    checkChooser(checked, { package: id }, taken, [...items, ...always]);
  }
}

function inAll(builds: readonly ProofRow[], known: readonly string[]): readonly string[] {
  return [...(builds[0]?.selected ?? [])].filter(
    (id) => !known.includes(id) && builds.every(({ selected }) => selected.has(id)),
  );
}

function checkChooser(
  checked: Case,
  by: Chooser,
  builds: readonly ProofRow[],
  known: readonly string[],
): void {
  if (builds.length === 0) return;
  const isOwn = (each: { readonly by: Chooser }): boolean => JSON.stringify(each.by) === JSON.stringify(by);
  const items = of(checked, "forces").find(isOwn)?.items ?? [];
  expect([...items].sort()).toEqual([...inAll(builds, known)].sort());
  const always = boundsOf(checked, checked.builds);
  const isNews = (bound: Bound): boolean => !always.some((each) => isDeepStrictEqual(each, bound));
  const bounds = boundsOf(checked, builds).filter((bound) => by === null || isNews(bound));
  const found = [...of(checked, "only-at-least"), ...of(checked, "only-below")].filter(isOwn);
  expect(found.map(({ kind, fact, value }) => ({ kind, fact, value }))).toEqual(
    expect.arrayContaining([...bounds]),
  );
  expect(found.length).toBe(bounds.length);
}

type Bound = Pick<Extract<ProofFinding, { kind: "only-at-least" | "only-below" }>, "kind" | "fact" | "value">;

/** How far from the ends of its range a fact stays in some builds. */
function boundsOf({ catalogue, vehicles }: Case, builds: readonly ProofRow[]): readonly Bound[] {
  return Object.entries(vehicles.facts ?? {}).flatMap(([fact, range]): Bound[] => {
    const asked = JSON.stringify(catalogue.model.rules).matchAll(
      new RegExp(`"fact":"${fact}","atLeast":([0-9.]+)`, "g"),
    );
    const thresholds = [...asked].map(([, value]) => Number(value));
    const values = thresholds.length > 0 ? tellingValues(fact, range, thresholds).map(Number) : [];
    const had = builds.map(({ facts }) => Number(facts[fact]));
    const value = values.filter((each) => each <= Math.min(...had)).at(-1);
    const above = values.find((each) => each > Math.max(...had));
    return [
      ...(value !== undefined && value !== values[0]
        ? [{ kind: "only-at-least" as const, fact, value }]
        : []),
      ...(above === undefined ? [] : [{ kind: "only-below" as const, fact, value: above }]),
    ];
  });
}

function checkLimits({ catalogue, vehicles, proof, rows }: Case): void {
  const mayBreak = new Set([...(vehicles.overridable ?? []), "further"]);
  for (const { limit, verdict, by, example } of proof.limits) {
    const over = rows.filter(
      ({ broken }) => broken.has(limit) && [...broken].every((id) => id === limit || mayBreak.has(id)),
    );
    if (over.length === 0) {
      expect(verdict).toBe("kept-by-others");
      checkClash(
        rows.filter(({ broken }) => broken.has(limit)),
        by ?? [],
      );
      continue;
    }
    const isSetAside = vehicles.overridable?.includes(limit);
    expect(verdict).toBe(limit === "further" ? "exceeded" : isSetAside ? "set-aside" : "kept-by-itself");
    const same = over.find(
      ({ selected, facts }) =>
        selected.size === example?.items.length &&
        example.items.every((id) => selected.has(id)) &&
        Object.entries(vehicles.facts ?? {}).every(([fact, range]) => {
          const value = example.facts[fact] ?? tellingValues(fact, range, [])[0] ?? 0;
          return rising(facts[fact] ?? 0, value) === 0;
        }),
    );
    expect(same).toBeDefined();
    expect(example?.over).toBeCloseTo((example?.asked ?? 0) - (example?.supplied ?? 0), 9);
    expect(example?.over).toBeGreaterThan(0);
  }
  const capacities = (catalogue.model.rules ?? []).filter(({ kind }) => kind === "capacity");
  expect(proof.limits.map(({ limit }) => limit)).toEqual([...capacities.map(({ id }) => id), "further"]);
}

function checkCounts({ catalogue, proof, builds }: Case): void {
  const distinct = (rows: readonly ProofRow[], ids: readonly string[]): bigint =>
    BigInt(new Set(rows.map(({ selected }) => ids.filter((id) => selected.has(id)).join(" "))).size);
  const all = catalogue.model.items.map(({ id }) => id);
  const expected = (catalogue.packages ?? []).map(({ id, items, choices = [], options = [] }) => {
    const taken = builds.filter(({ selected }) => {
      return items.every((item) => selected.has(item)) && choices.every((each) => keepsPick(each, selected));
    });
    const open = [...new Set([...choices.flatMap((each) => each.items), ...options])];
    const ways = open.length > 0 ? { isExact: true, count: distinct(taken, open) } : null;
    return { package: id, isExact: true, builds: distinct(taken, all), ways };
  });
  expect(proof.counts).toEqual([
    { package: null, isExact: true, builds: distinct(builds, all), ways: null },
    ...expected,
  ]);
}
