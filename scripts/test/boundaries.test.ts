import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import { cruise, type IConfiguration, type ICruiseResult } from "dependency-cruiser";
import { afterAll, beforeAll, expect, test } from "vitest";

const rules: IConfiguration = createRequire(import.meta.url)("../../.dependency-cruiser.cjs");

/** For each rule a file that breaks it: path → what it imports. Paths are those of this repository's layout. */
const plants: Readonly<Record<string, { readonly file: string; readonly imports: string }>> = {
  "no-circular": { file: "packages/units/src/one.ts", imports: "./two" },
  "pure-stays-pure": { file: "packages/pricing/src/reads-a-file.ts", imports: "node:fs" },
  "search-is-handed-in": { file: "packages/prerequisites/src/reaches.ts", imports: "./solver/worker" },
  "solver-imports-its-solver-only": {
    file: "packages/prerequisites/src/solver/reads.ts",
    imports: "node:fs",
  },
  "units-import-nothing": {
    file: "packages/units/src/reaches-up.ts",
    imports: "../../engineering/src/index",
  },
  "calculations-do-not-mix": { file: "packages/pricing/src/mixes.ts", imports: "../../compliance/src/index" },
  "contract-knows-calculations-only": {
    file: "packages/contract/src/stores.ts",
    imports: "../../database/src/index",
  },
  "documents-know-units-only": {
    file: "packages/documents/src/knows.ts",
    imports: "../../workshop/src/index",
  },
  "database-knows-units-only": { file: "packages/database/src/knows.ts", imports: "../../pricing/src/index" },
  "only-database-sees-prisma": { file: "packages/workshop/src/queries.ts", imports: "pg" },
  "nothing-imports-an-app": { file: "packages/workshop/src/shows.ts", imports: "../../../apps/web/src/page" },
  "web-goes-through-use-cases": {
    file: "apps/web/src/calculates.ts",
    imports: "../../../packages/pricing/src/index",
  },
  "no-deep-imports": { file: "packages/workshop/src/digs.ts", imports: "../../units/src/one" },
  "never-your-own-index": { file: "packages/workshop/src/circles.ts", imports: "./index" },
};

/** What the planted imports lead to, and a file that breaks nothing. */
const ground: Readonly<Record<string, string>> = {
  "tsconfig.json": "{}",
  "node_modules/pg/package.json": '{ "name": "pg", "main": "index.js" }',
  "node_modules/pg/index.js": "module.exports = {};",
  "packages/units/src/two.ts": 'import "./one";\nexport const two = 2;\n',
  "packages/units/src/index.ts": 'export * from "./two";\n',
  "packages/prerequisites/src/solver/worker.ts": "export const worker = 1;\n",
  "packages/engineering/src/index.ts": "export const engine = 1;\n",
  "packages/pricing/src/index.ts": "export const price = 1;\n",
  "packages/compliance/src/index.ts": "export const rule = 1;\n",
  "packages/database/src/index.ts": "export const store = 1;\n",
  "packages/workshop/src/index.ts": "export const useCase = 1;\n",
  "apps/web/src/page.ts": "export const page = 1;\n",
  "packages/workshop/src/behaves.ts": 'import "../../units/src/index";\n',
};

let place: string;
let result: ICruiseResult;

beforeAll(async () => {
  place = mkdtempSync(path.join(tmpdir(), "buildproof-boundaries-"));
  for (const [file, content] of Object.entries(ground)) put(file, content);
  for (const { file, imports } of Object.values(plants)) put(file, `import "${imports}";\n`);
  const { tsConfig: _, ...options } = rules.options ?? {};
  const { output } = await cruise(["apps", "packages"], {
    ...options,
    ruleSet: { forbidden: rules.forbidden ?? [] },
    validate: true,
    baseDir: place,
  });
  if (typeof output === "string") throw new Error("a report as data was expected");
  result = output;
});

afterAll(() => rmSync(place, { recursive: true, force: true }));

function put(file: string, content: string): void {
  mkdirSync(path.dirname(path.join(place, file)), { recursive: true });
  writeFileSync(path.join(place, file), content);
}

function brokenBy(file: string): string[] {
  return result.summary.violations.filter((each) => each.from === file).map((each) => each.rule.name);
}

test("every boundary rule has a planted violation", () => {
  expect(Object.keys(plants).sort()).toEqual((rules.forbidden ?? []).map(({ name }) => name ?? "").sort());
});

test.each(Object.entries(plants))("the rule %s fires on a planted violation", (rule, { file }) => {
  expect(brokenBy(file)).toContain(rule);
});

test("an import that keeps the rules is left in peace", () => {
  expect(brokenBy("packages/workshop/src/behaves.ts")).toEqual([]);
});
