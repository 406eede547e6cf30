// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import { expect, test } from "vitest";
import type { Search } from "../complete/search-program";
import type { Model } from "../model/model";
import { clingoSearch } from "../solver/clingo-search";
import { madeQuestion } from "../testing/instances";
import { findingSentence, limitSentence, type ProofWords } from "./proof-sentence";
import { proveCatalogue } from "./prove-catalogue";

const { model } = madeQuestion(3, { items: 60, rules: 120, capacities: 5, groups: 8, chosen: 1 });
const words: ProofWords = {
  item: (id) => `the ${id}`,
  package: (id) => `the package ${id}`,
  rule: (id) => `What ${id} says.`,
  fact: (name, value, how) => `${name} ${how} ${value}`,
  limit: (id) => ({ name: `limit ${id}`, unit: "kg" }),
};

test("the same catalogue is proven in the same words every time", async () => {
  const proofs = [];
  for (let time = 0; time < 2; time += 1) {
    const { findings, limits, counts } = await proveCatalogue({ model }, {}, clingoSearch(60_000), {
      countSteps: 2_000,
    });
    proofs.push({
      findings: findings.map((each) => findingSentence(each, words)),
      limits: limits.map((each) => limitSentence(each, words)),
      counts,
    });
  }
  expect(proofs[0]).toEqual(proofs[1]);
});

test("whatever the time, nothing is said that more of it does not say too", async () => {
  const whole = await proveCatalogue({ model }, {}, clingoSearch(60_000), { countSteps: 2_000 });
  const said = new Set(whole.findings.map((each) => JSON.stringify({ ...each, clash: null, by: null })));
  let open = 0;
  for (const looks of [1, 5, 20, 60, 150, 400]) {
    let left = looks;
    const cut = await proveCatalogue({ model }, {}, clingoSearch(60_000), {
      isOver: () => --left < 0,
      countSteps: 100,
    });
    for (const finding of cut.findings) {
      if (finding.kind === "unsettled") open += 1;
      else if (finding.kind !== "forces") {
        expect(said).toContain(JSON.stringify({ ...finding, clash: null, by: null }));
      }
    }
    for (const { limit, verdict } of cut.limits) {
      if (verdict === "unsettled") open += 1;
      else expect(verdict).toBe(whole.limits.find((each) => each.limit === limit)?.verdict);
    }
  }
  expect(open).toBeGreaterThan(20);
});

test("a solver that gives up leaves the question open and says so", async () => {
  const hopeless: Search = () => Promise.resolve({ status: "stopped", found: null, least: 0n });
  // Too many ways round for a short look: eight holes for nine pegs.
  const pegs = Array.from({ length: 9 }, (_, peg) =>
    Array.from({ length: 8 }, (_, hole) => `p${peg}h${hole}`),
  );
  const hard: Model = {
    items: pegs.flat().map((id) => ({ id })),
    groups: Array.from({ length: 8 }, (_, hole) => ({
      id: `hole ${hole}`,
      pick: "at-most-one" as const,
      items: pegs.flatMap((row) => row[hole] ?? []),
    })),
    rules: pegs.map((row, at) => ({
      id: `peg ${at}`,
      kind: "needs" as const,
      then: { any: row.map((item) => ({ item })) },
    })),
  };
  const { findings, counts } = await proveCatalogue({ model: hard }, {}, hopeless);
  expect(findings).toEqual([{ kind: "unsettled", question: { about: "buildable" } }]);
  expect(findings.map((each) => findingSentence(each, words))).toEqual([
    "Whether anything can be built could not be settled in time: prove it again with more time.",
  ]);
  expect(counts).toEqual([{ package: null, isExact: false, builds: 0n, ways: null }]);
});

test("a catalogue with a name that is not in it is refused before anything is proven", async () => {
  const items = [{ id: "pump" }];
  const prove = (packages: { id: string; items: string[] }[], facts = {}) =>
    proveCatalogue({ model: { items }, packages }, { facts }, clingoSearch(1_000));
  await expect(prove([{ id: "kit", items: ["blower"] }])).rejects.toThrow('There is no item "blower"');
  await expect(prove([{ id: "kit", items: ["pump", "pump"] }])).rejects.toThrow(
    'The id "pump" is used twice',
  );
  await expect(prove([], { octane: { oneOf: [] } })).rejects.toThrow('No value of "octane" is left');
  await expect(prove([], { octane: { from: 98, to: 91 } })).rejects.toThrow("the lower limit first");
});

test("each finding is said with its reasons and with what to do", async () => {
  const small: Model = {
    items: ["blower", "pump", "lamp", "winch"].map((id) => ({ id })),
    rules: [
      { id: "feed", kind: "needs", when: { item: "blower" }, then: { item: "pump" } },
      { id: "no feed", kind: "excludes", when: { item: "blower" }, then: { item: "pump" } },
      { id: "octane", kind: "needs", when: { item: "lamp" }, then: { fact: "octane", atLeast: 95 } },
      { id: "load", kind: "capacity", base: 10, demand: { winch: 8, lamp: 4 } },
    ],
  };
  const { findings, limits } = await proveCatalogue(
    { model: small, packages: [{ id: "kit", items: ["winch", "lamp"] }] },
    { facts: { octane: { oneOf: [91, 95] } }, overridable: ["load"] },
    clingoSearch(10_000),
  );
  expect([
    ...findings.map((each) => findingSentence(each, words)),
    ...limits.map((each) => limitSentence(each, words)),
  ]).toEqual([
    "the package kit can never be built. This speaks against it: “What load says.”",
    "the blower can never be chosen. These leave no way together: “What feed says.” “What no feed says.”",
    "Every build with the lamp is only for vehicles with octane at-least 95.",
    "The limit “limit load” is exceeded when somebody sets its rule aside, as by the lamp and the winch on a vehicle with octane is 95: 12 kg asked of 10 kg. Make it a safety rule if nobody may.",
  ]);
});
