import { describe, expect, test } from "vitest";
import { decodedText } from "./decoded-text";
import { readCsvTable } from "./read-csv-table";

const utf8 = (text: string) => new TextEncoder().encode(text);

function utf16le(text: string): Uint8Array {
  return new Uint8Array(Buffer.from(`\uFEFF${text}`, "utf16le"));
}

describe("a table from a spreadsheet", () => {
  // The examples of RFC 4180, clause 2: line breaks, commas and doubled quotes within a quoted field.
  test("is read as RFC 4180 writes it", () => {
    const table = readCsvTable(utf8('a,b,c\r\naaa,"b\r\nbb",ccc\r\n"x, y","b""bb",zzz\r\n'), 10);
    expect(table).toMatchObject({
      header: ["a", "b", "c"],
      delimiter: ",",
      rows: [
        { row: 2, cells: ["aaa", "b\r\nbb", "ccc"] },
        { row: 3, cells: ["x, y", 'b"bb', "zzz"] },
      ],
    });
  });

  test("is recognised by its delimiter, its byte order mark and its code page", () => {
    const comma = readCsvTable(utf8("\uFEFFcode,name\ntyre,Reifen größer\n"), 10);
    expect(comma).toMatchObject({ delimiter: ",", encoding: "UTF-8", header: ["code", "name"] });
    expect(readCsvTable(utf8("code;name\na;b\n"), 10)).toMatchObject({ delimiter: ";" });
    const tabs = readCsvTable(utf16le("code\tname\na\tgrößer\n"), 10);
    expect(tabs).toMatchObject({ delimiter: "\t", encoding: "UTF-16", rows: [{ cells: ["a", "größer"] }] });
    // 0xF6 alone is no UTF-8; it is ö in Windows-1252 (WHATWG Encoding Standard, index windows-1252).
    expect(decodedText(new Uint8Array([0x67, 0x72, 0xf6]))).toEqual({
      text: "grö",
      encoding: "Windows-1252",
    });
    expect(decodedText(new Uint8Array([0xfe, 0xff, 0x00, 0x61]))?.text).toBe("a");
  });

  test("keeps its row numbers over empty rows and the line that names the delimiter", () => {
    const table = readCsvTable(utf8("sep=;\ncode;name\n;\na;b\n"), 10);
    expect(table).toMatchObject({ header: ["code", "name"], rows: [{ row: 4, cells: ["a", "b"] }] });
  });

  test("is refused when it is no text, has nothing in it, is broken or too long", () => {
    expect(readCsvTable(new Uint8Array([0x50, 0x4b, 3, 4, 0, 0]), 10)).toMatchObject({ code: "not-text" });
    expect(readCsvTable(utf8(""), 10)).toMatchObject({ code: "empty" });
    expect(readCsvTable(utf8('a,b\n1,2\n"3,4\n'), 10)).toMatchObject({ code: "unreadable", row: 3 });
    expect(readCsvTable(utf8("a\n1\n2\n3\n"), 2)).toMatchObject({ code: "too-many-rows" });
    expect(readCsvTable(utf8("a\n1\n2\n"), 2)).toMatchObject({ rows: [{ row: 2 }, { row: 3 }] });
  });
});
