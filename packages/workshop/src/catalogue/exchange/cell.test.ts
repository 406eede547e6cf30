import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { amount, type Cell, hours, number, text, wholeNumber, yesNo } from "./cell";
import { codes, sentences } from "./list-cell";

const australian = { currency: "AUD", decimalComma: false } as const;

function comesBack<Value>(cell: Cell<Value>, value: Value): void {
  const written = cell.write(value, "AUD");
  // What the file writer does to text that a spreadsheet would run.
  const inFile =
    typeof written === "string" && /^[=+\-@\t\r\n\0＝＋－＠]/.test(written) ? `'${written}` : String(written);
  expect(cell.read(inFile, australian)).toEqual({ ok: true, value });
}

describe("a cell of the catalogue's tables", () => {
  test("gives back any text, list, figure and amount that was written", () => {
    const anyText = fc.oneof(fc.string(), fc.stringMatching(/^'*[=+\-@;[\n ]{0,3}[a-z]*$/));
    fc.assert(fc.property(anyText, (value) => comesBack(text, value)));
    fc.assert(fc.property(fc.array(anyText), (value) => comesBack(codes, value)));
    fc.assert(fc.property(fc.array(anyText), (value) => comesBack(sentences, value)));
    const figure = fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0);
    fc.assert(fc.property(figure, (value) => comesBack(number, Object.is(value, -0) ? 0 : value)));
    fc.assert(fc.property(fc.integer({ min: 0, max: 100_000_000 }), (value) => comesBack(amount, value)));
  });

  test("reads a decimal comma where cells are not split at commas", () => {
    const german = { currency: "EUR", decimalComma: true } as const;
    expect(amount.read("1234,50", german)).toEqual({ ok: true, value: 123_450 });
    expect(number.read("2,5", german)).toEqual({ ok: true, value: 2.5 });
    expect(hours.read("2,50", german)).toEqual({ ok: true, value: "2.5" });
    expect(amount.read("1234,50", australian)).toMatchObject({ ok: false });
  });

  test.each([
    [amount, "1,234.50"],
    [amount, "12.345"],
    [amount, "-5"],
    [amount, "$12"],
    [number, "12 kg"],
    [number, "1e999"],
    [wholeNumber, "1.5"],
    [hours, "two"],
    [yesNo, "maybe"],
    [codes, '["open"'],
  ])("refuses what it cannot mean: %#", (cell, written) => {
    const read = (cell as Cell<unknown>).read(written, australian);
    expect(read).toMatchObject({ ok: false, because: expect.stringMatching(/[.]$/) });
  });
});
