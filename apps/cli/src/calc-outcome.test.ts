import { describe, expect, test } from "vitest";
import { calcOutcome } from "./calc-outcome";

const reading = (input: string) => () => Promise.resolve(input);
const neverReads = () => Promise.reject(new Error("standard input was read"));

describe("calc", () => {
  test("without a name lists the calculations, a line each, and reads nothing", async () => {
    const { code, out } = await calcOutcome([], neverReads);
    expect(code).toBe(0);
    expect(out.split("\n").filter((line) => /^[a-z-]+ {2,}\S/.test(line))).toHaveLength(
      out.trim().split("\n").length,
    );
  });

  test("prints one JSON value and ends with 0", async () => {
    const { code, out, error } = await calcOutcome(["abn"], reading('{"abn":"1"}'));
    expect({ code, error }).toEqual({ code: 0, error: "" });
    expect(JSON.parse(out)).toEqual({ valid: false, abn: null, display: null });
  });

  test.each([
    [["nope"], "{}", "unknown-calculation"],
    [["vin"], '{"vin":"1","colour":1}', "unknown-field"],
    [["vin"], "", "not-json"],
    [["vin", "--colour"], "{}", "usage"],
  ])("%j ends with 2 and one error on standard error only", async (args, input, code) => {
    const outcome = await calcOutcome(args, reading(input));
    expect(outcome).toMatchObject({ code: 2, out: "" });
    expect(JSON.parse(outcome.error)).toEqual({
      error: { code, message: expect.any(String), path: expect.any(String) },
    });
  });

  test("--schema prints input and output without reading", async () => {
    const { out } = await calcOutcome(["vin", "--schema"], neverReads);
    expect(Object.keys(JSON.parse(out))).toEqual(["input", "output"]);
  });

  test("--within bounds a search, and is refused where nothing is searched or no time is named", async () => {
    const question = reading(
      '{"items":[{"id":"a","price":2}],"groups":[{"id":"g","pick":"at-least-one","items":["a"]}]}',
    );
    const within = await calcOutcome(["prerequisites-complete", "--within", "5000"], question);
    expect(JSON.parse(within.out)).toMatchObject({ status: "optimal", add: ["a"], total: 2 });
    for (const written of ["soon", "0", "-1", "1.5", "600001"]) {
      const refused = await calcOutcome(["prerequisites-complete", "--within", written], neverReads);
      expect(JSON.parse(refused.error)).toMatchObject({ error: { code: "invalid-field", path: "within" } });
    }
    const unsearched = await calcOutcome(["abn", "--within", "5000"], neverReads);
    expect(JSON.parse(unsearched.error)).toMatchObject({ error: { code: "usage" } });
  });
});
