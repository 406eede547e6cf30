import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";

const sources = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith(".test.ts"))
  .map((name) => readFileSync(path.join(import.meta.dirname, name), "utf8"));

/** Two sets of the currency file share its vectors and look at all of them, so asking there would say nothing. */
const LOOKED_AT_WHOLE = ["currency.json"];

test("every file of vectors that is read here is asked at the end for those that nothing checked", () => {
  const read = sources.flatMap((source) =>
    [...source.matchAll(/(?:reference|engineering)Vectors(?:<[^(]*>)?\(\s*"([\w-]+\.json)"/g)].map(
      ([, file]) => file,
    ),
  );
  const asking = sources.filter((source) => source.includes("unusedVectors("));
  const unasked = read.filter((file) => !asking.some((source) => source.includes(`"${file}"`)));
  expect(new Set(read).size).toBeGreaterThanOrEqual(15);
  expect(unasked.filter((file) => !LOOKED_AT_WHOLE.includes(file ?? ""))).toEqual([]);
});
