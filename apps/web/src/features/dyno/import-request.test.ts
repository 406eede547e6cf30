import { describe, expect, test } from "vitest";
import { readSetUp } from "./import-request";

describe("the set-up in the address of an import", () => {
  test("is read as figures, words, the file's name and the request's key", () => {
    const query = new URLSearchParams({
      kind: "baseline",
      barometerKPa: "99.2",
      rampRpmPerS: "1,200",
      note: "",
      name: "run 1.csv",
      requestKey: "k",
    });
    expect(readSetUp(query)).toEqual({
      setUp: { kind: "baseline", barometerKPa: 99.2, rampRpmPerS: 1200 },
      name: "run 1.csv",
      key: "k",
    });
  });

  test("keeps what is no number as typed, so that it is refused by name and not taken for something else", () => {
    expect(readSetUp(new URLSearchParams({ airTempC: "warm" })).setUp).toEqual({ airTempC: "warm" });
  });
});
