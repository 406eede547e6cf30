import Papa from "papaparse";
import { expect, test } from "vitest";
import { safeCsv } from "./safe-csv";

/* RFC 4180, clause 2: CRLF after every record; fields with comma, quote or line end are quoted; quotes are doubled. */
test("a file is laid out as RFC 4180 says", () => {
  expect(
    safeCsv(
      ["name", "note"],
      [
        ["Pump", 'says "8, not 9"'],
        ["Belt", "two\r\nlines"],
        ["Cooler", null],
      ],
    ),
  ).toBe('name,note\r\nPump,"says ""8, not 9"""\r\nBelt,"two\r\nlines"\r\nCooler,\r\n');
});

/* OWASP, CSV Injection: the characters that start a formula. */
test.each([
  "=1+2",
  "+61 8 5550 1234",
  "-cmd|' /C calc'!A0",
  "@SUM(A1)",
  "\tx",
  "\rx",
  "\nx",
  "\u0000x",
  "＝1",
])("text that begins like the formula %j is held down by an apostrophe", (text) => {
  const [, row] = Papa.parse<string[]>(safeCsv(["a"], [[text]])).data;
  expect(row).toEqual([`'${text}`]);
});

test("negative numbers stay numbers, exact to the last cent", () => {
  expect(safeCsv(["a", "b"], [[-5.25, -9007199254740993n]])).toBe("a,b\r\n-5.25,-9007199254740993\r\n");
});

test("a number that is none is refused and never written as NaN", () => {
  expect(() => safeCsv(["a"], [[Number.NaN]])).toThrow(RangeError);
});

test("what was written is read back as it was", () => {
  const rows = [["a,b", 'q"q', " spaced ", "line\nline", "Łódź €"]];
  const read = Papa.parse<string[]>(safeCsv(["1", "2", "3", "4", "5"], rows).trimEnd()).data;
  expect(read.slice(1)).toEqual(rows);
});

test("a byte-order mark comes first when a spreadsheet asks for one", () => {
  expect(safeCsv(["a"], [], { byteOrderMark: true })).toBe("\uFEFFa\r\n");
});
