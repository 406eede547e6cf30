import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { plan } from "@buildproof/planning";
import { readInstance, violations } from "@buildproof/planning/testing";

type Row = {
  readonly instance: string;
  readonly makespan: number;
  readonly schedules: number;
  readonly ms: number;
  readonly start: Readonly<Record<string, number>>;
};

const USAGE =
  "npm run --silent bench -- planning --instances DIR --schedules N [--seed S] [--reference FILE] [--json]";

/**
 * Plans every published instance of a folder within so many passes. As JSON, or as a table with the mean deviation from
 * a reference, beside a single pass of the latest-finish rule.
 */
export function benchInstances(args: readonly string[]): number {
  const { instances, schedules = "5000", seed = "1", reference, json = false } = optionsOf(args);
  if (!instances || !/^[1-9]\d{0,8}$/.test(schedules) || !/^\d{1,9}$/.test(seed)) {
    console.error(`This command is called as: ${USAGE}.`);
    return 2;
  }
  if (!existsSync(instances)) {
    console.error(`There is no folder ${instances}: name the one that holds the instances.`);
    return 2;
  }
  const texts = instanceTexts(instances);
  if (texts.length === 0) {
    console.error(`The folder ${instances} holds no .sm file and no job-shop text.`);
    return 2;
  }
  const rows = texts.map(([name, text]) => planned(name, text, Number(schedules), Number(seed)));
  if (json) console.log(JSON.stringify(rows));
  else {
    const once = texts.map(([name, text]) => planned(name, text, 1, 1));
    table(rows, once, referenceOf(instances, reference));
  }
  return 0;
}

function optionsOf(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        instances: { type: "string" },
        schedules: { type: "string" },
        seed: { type: "string" },
        reference: { type: "string" },
        json: { type: "boolean" },
      },
    }).values;
  } catch {
    return {};
  }
}

function instanceTexts(folder: string): readonly (readonly [name: string, text: string])[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => [name, readFileSync(path.join(folder, name), "utf8")] as const)
    .filter(([name, text]) => name.endsWith(".sm") || isJobShop(text))
    .map(([name, text]) => [name.replace(/\.(sm|txt)$/, ""), text] as const)
    .sort(([a], [b]) => a.localeCompare(b, "en", { numeric: true }));
}

function isJobShop(text: string): boolean {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "" && !line.startsWith("#"));
  return /^\s*\d+\s+\d+\s*$/.test(lines[0] ?? "");
}

function planned(instance: string, text: string, schedules: number, seed: number): Row {
  const model = readInstance(text);
  const begun = performance.now();
  const found = plan(model, { schedules, seed });
  const ms = Math.round(performance.now() - begun);
  // A plan that breaks anything is no result.
  const [broken] = violations(model, found.start, found.end);
  if (broken) throw new Error(`The plan of ${instance} does not hold: ${broken}.`);
  return { instance, makespan: found.objective, schedules: found.schedules, ms, start: found.start };
}

type Reference = ReadonlyMap<string, Readonly<Record<string, string>>>;

function referenceOf(folder: string, named: string | undefined): Reference {
  const file = named ?? `${path.resolve(folder)}-reference.csv`;
  if (!existsSync(file)) return new Map();
  const [heading = "", ...lines] = readFileSync(file, "utf8").trim().split(/\r?\n/);
  const columns = heading.split(",");
  return new Map(
    lines.map((line) => {
      const values = line.split(",");
      return [values[0] ?? "", Object.fromEntries(columns.map((column, at) => [column, values[at] ?? ""]))];
    }),
  );
}

function table(rows: readonly Row[], once: readonly Row[], reference: Reference): void {
  const ratio = mean(
    rows.map(({ makespan }, at) => (once[at]?.makespan ?? makespan) / Math.max(1, makespan)),
  );
  for (const { instance, makespan, schedules, ms } of rows) {
    const best = bestOf(reference, instance);
    console.log(
      `${instance.padEnd(12)} ${String(makespan).padStart(7)} ${String(best || "").padStart(7)} ${String(schedules).padStart(8)} passes ${String(ms).padStart(7)} ms`,
    );
  }
  console.log(
    `\n${rows.length} instances. One pass of the latest-finish rule is ${ratio.toFixed(4)} times as long.`,
  );
  const above = (of: (instance: string) => number) => (row: Row) => {
    const known = of(row.instance);
    return known > 0 ? [(100 * (row.makespan - known)) / known] : [];
  };
  const told = (what: string, of: (instance: string) => number): void => {
    const ours = rows.flatMap(above(of));
    if (ours.length === 0) return;
    console.log(
      `Mean above ${what}: ${mean(ours).toFixed(3)} %; one pass of the rule ${mean(once.flatMap(above(of))).toFixed(3)} % (${ours.length} instances).`,
    );
  };
  told("the best known end", (instance) => bestOf(reference, instance));
  told("the critical path", (instance) => Number(reference.get(instance)?.cpm ?? 0));
  const passes = rows.reduce((sum, row) => sum + row.schedules, 0);
  const ms = rows.reduce((sum, row) => sum + row.ms, 0);
  console.log(`${Math.round((1000 * passes) / Math.max(1, ms))} passes a second.`);
}

function bestOf(reference: Reference, instance: string): number {
  const found = reference.get(instance);
  return Number(found?.ub ?? found?.optimum ?? 0);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
}
