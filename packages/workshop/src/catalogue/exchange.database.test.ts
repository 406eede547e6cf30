import { describe, expect, test } from "vitest";
import { UploadedFile } from "../paperwork/uploaded-file";
import { demoWorkshop } from "../testing/demo-workshop";
import { exportCatalogue } from "./export-catalogue";
import { checkImport, importCatalogue } from "./import-catalogue";
import { partKinds } from "./part-content";
import { publishVersion } from "./publish-version";

const workshop = demoWorkshop();

const file = (name: string, text: string) => new UploadedFile(name, new TextEncoder().encode(text));

const check = (...files: readonly UploadedFile[]) =>
  workshop.done("manager", checkImport, { files: [...files] });

async function exported(part: (typeof partKinds)[number] | null) {
  return workshop.done("owner", exportCatalogue, { part });
}

/** The first problem of a table of items. */
async function problemOf(text: string, name = "items.csv") {
  const { problems } = await check(file(name, text));
  return problems.shown[0];
}

describe("the catalogue as files", () => {
  test("comes back as it was, from the document and from the tables", async () => {
    const whole = await exported(null);
    const fromDocument = await check(file(whole.name, whole.text));
    expect(fromDocument).toMatchObject({ problems: { count: 0 }, parts: [] });
    expect(fromDocument.same).toBeGreaterThan(50);

    const tables = [];
    for (const part of partKinds) {
      const table = await exported(part);
      tables.push(file(table.name, table.text));
    }
    const fromTables = await workshop.done("manager", checkImport, { files: tables, absent: "go" });
    expect(fromTables).toMatchObject({ problems: { count: 0 }, parts: [], same: fromDocument.same });
    expect(fromTables.sources.map(({ parts }) => parts[0])).toEqual(partKinds);
  });

  test("survives a spreadsheet that saves with semicolons, decimal commas and its own line ends", async () => {
    const { text } = await exported("item");
    const [header = "", ...rows] = text.replace(/^\uFEFF/, "").split("\r\n");
    const columns = header.split(",");
    const line = rows.find((row) => row.startsWith("charge-cooler,")) ?? "";
    expect(line).not.toBe("");
    const priceAt = columns.indexOf("price_aud");
    expect(priceAt).toBeGreaterThan(0);
    const report = await check(
      file("prices.csv", "\uFEFFcode;price_aud\rcharge-cooler;1999,90\rbelt-8-rib;150\r"),
    );
    const changed = report.parts.find(({ part }) => part === "item")?.changed;
    expect(report.sources[0]).toMatchObject({ delimiter: "semicolon", parts: ["item"] });
    expect(changed?.shown.map(({ code }) => code)).toContain("charge-cooler");
    const cooler = changed?.shown.find(({ code }) => code === "charge-cooler");
    expect(cooler?.columns).toEqual([{ title: "price_aud", before: expect.any(String), after: "1999.90" }]);
  });

  test("is changed by nothing but a published draft, made of what was looked at", async () => {
    const files = [
      file(
        "items.csv",
        "code,name,system,kind,price_aud,cost_aud,fits\nlamp-bar,Lamp bar,appearance,part,480,300,ridgewold-57\n",
      ),
    ];
    const report = await check(...files);
    const item = report.parts.find(({ part }) => part === "item");
    expect(item?.added.shown).toEqual([{ code: "lamp-bar", name: "Lamp bar", columns: [] }]);
    const input = { files, title: "Lamp bar", seen: report.fingerprint };
    const { versionId, changes } = await workshop.done("manager", importCatalogue, input);
    expect(changes).toBe(1);
    expect((await check(...files)).parts).toEqual(report.parts);
    await workshop.done("owner", publishVersion, { versionId, revision: 1 });
    const after = await check(...files);
    expect(after).toMatchObject({ parts: [], same: 1 });
    const refusal = await workshop.refused("manager", importCatalogue, input);
    expect(refusal.code).toBe("import-changes-nothing");
  });

  test("takes out what a whole table no longer names, unless something else needs it", async () => {
    const { text } = await exported("group");
    const lines = text.split("\r\n");
    const kept = lines.filter((line) => !line.startsWith("one-belt,")).join("\r\n");
    const files = [file("groups.csv", kept)];
    const report = await workshop.done("manager", checkImport, { files, absent: "go" });
    expect(report.parts[0]?.removed.shown.map(({ code }) => code)).toEqual(["one-belt"]);
    expect((await workshop.done("manager", checkImport, { files })).parts).toEqual([]);

    const items = (await exported("item")).text.split("\r\n");
    const without = items.filter((line) => !line.startsWith("charge-cooler,")).join("\r\n");
    const bad = { files: [file("items.csv", without)], absent: "go" };
    const { problems } = await workshop.done("manager", checkImport, bad);
    expect(problems.shown[0]).toMatchObject({ row: null });
    expect(problems.shown[0]?.sentence).toMatch(/names the item charge-cooler\. It is not in the file/);
  });
});

describe("a file that is wrong is told where and how", () => {
  const head = "code,name,system,kind,price_aud,cost_aud";

  test.each([
    ["amount", `${head}\nx,X,air,part,12.345,1\n`, 2, "price_aud", /not an amount in AUD/],
    ["amount with a unit", `${head}\nx,X,air,part,A$ 12,1\n`, 2, "price_aud", /not an amount/],
    ["word", `${head}\nx,X,engine,part,1,1\n`, 2, "system", /none of air, fuel/],
    ["code", `${head}\nBig Pump,X,air,part,1,1\n`, 2, "code", /small letters, digits and hyphens/],
    [
      "missing figure",
      "code,name,system,kind,price_aud\nx,X,air,part,1\n",
      2,
      "cost_aud",
      /new one needs this/,
    ],
    ["empty figure", `${head}\nx,X,air,part,1,\n`, 2, "cost_aud", /empty: write it in/],
    [
      "vehicle",
      `${head},fits\nx,X,air,part,1,1,moon-buggy\n`,
      2,
      "fits",
      /names the vehicle model moon-buggy/,
    ],
    ["operation", `${head},operations\nx,X,air,part,1,1,no-such\n`, 2, "operations", /operation no-such/],
    ["double", `${head}\nx,X,air,part,1,1\n\nx,Y,air,part,1,1\n`, 4, "code", /stands in row 2 already/],
    ["unit", "code,mass_g\ncharge-cooler,900\n", 1, "mass_g", /has mass_kg: convert/],
    ["currency", "code,name,price_nzd\ncharge-cooler,A,9\n", 1, "price_nzd", /has price_aud: convert/],
    ["column", "code,price_aud,colour\ncharge-cooler,9,red\n", 1, "colour", /no such column/],
    ["doubled column", "code,price_aud,price_aud\ncharge-cooler,9,9\n", 1, "price_aud", /twice/],
    ["no code", "name,price_aud\nCooler,9\n", 1, "code", /no column code/],
    ["too many cells", `${head}\nx,X,air,part,1,234.50,1\n`, 2, null, /7 cells where the header has 6/],
    ["unclosed quotation", `${head}\nx,"X,air,part,1,1\n`, 2, null, /quotation mark/],
    ["nothing", "", null, null, /no header line/],
    ["unclear", "code,position\nx,1\n", 1, null, /do not tell what it holds/],
  ])("%s", async (_, text, row, column, sentence) => {
    expect(await problemOf(text)).toMatchObject({ row, column, sentence: expect.stringMatching(sentence) });
  });

  test("the condition of a rule, and a figure that its kind has no place for", async () => {
    const rules = "code,kind,when,then,reserve_pct,because,source";
    const broken = await problemOf(`${rules}\nr,needs,,"{""itm"":1}",,Because.,Mine.\n`);
    expect(broken).toMatchObject({ row: 2, column: "then", sentence: expect.stringMatching(/^A condition/) });
    const noJson = await problemOf(`${rules}\nr,needs,,pump,,Because.,Mine.\n`);
    expect(noJson).toMatchObject({ column: "then", sentence: expect.stringMatching(/not JSON/) });
    const gone = await problemOf(`${rules}\nr,needs,,"{""item"":""no-such""}",,Because.,Mine.\n`);
    expect(gone).toMatchObject({ column: "then", sentence: expect.stringMatching(/item no-such/) });
    const stray = await problemOf(`${rules}\nr,needs,,"{""item"":""belt-8-rib""}",5,Because.,Mine.\n`);
    expect(stray).toMatchObject({ row: 2, column: "reserve_pct" });
  });

  test("a document of another format, version, currency or shape", async () => {
    const document = (different: object) =>
      JSON.stringify({
        format: "buildproof-catalogue",
        version: 1,
        currency: "AUD",
        parts: {},
        ...different,
      });
    const cases = [
      ["{", /not whole JSON/],
      [document({ format: "other" }), /format is buildproof-catalogue/],
      [document({ version: 2 }), /Only version 1/],
      [document({ currency: "NZD" }), /in NZD, the workshop's in AUD/],
      [document({ parts: { items: [{ code: "x", name: "X" }] } }), /not what the catalogue has here/],
    ] as const;
    for (const [text, sentence] of cases)
      expect((await problemOf(text, "catalogue.json"))?.sentence).toMatch(sentence);
  });

  test("a workbook in place of a table, and more rows than are read at once", async () => {
    const workbook = new UploadedFile("book.xlsx", new Uint8Array([0x50, 0x4b, 3, 4, 0, 0, 0]));
    expect((await check(workbook)).problems.shown[0]?.sentence).toMatch(/no text file/);
    const rows = Array.from({ length: 50_001 }, (_, row) => `x${row},1`).join("\n");
    expect((await problemOf(`code,price_aud\n${rows}`))?.sentence).toMatch(/more than 50000 rows/);
  });
});

describe("a draft of an import", () => {
  const files = [file("items.csv", "code,price_aud\nbelt-10-rib,321\n")];
  const seen = "0".repeat(64);

  test("is refused while a point is open, and when it differs from what was looked at", async () => {
    const bad = { files: [file("items.csv", "code,price_aud\nbelt-10-rib,x\n")], title: "Bad", seen };
    expect((await workshop.refused("manager", importCatalogue, bad)).code).toBe("import-has-problems");
    const unseen = await workshop.refused("manager", importCatalogue, { files, title: "Unseen", seen });
    expect(unseen.code).toBe("import-differs");
    const rows = await workshop.sql(
      "select count(*)::int as n from catalogue_version where title in ('Bad', 'Unseen')",
    );
    expect(rows[0]?.n).toBe(0);
  });

  test("is refused without a file, with too much, and for whoever may not write the catalogue", async () => {
    expect((await workshop.refused("manager", checkImport, { files: [] })).code).toBe("invalid-input");
    const much = new UploadedFile("much.csv", new Uint8Array(20_000_001));
    expect((await workshop.refused("manager", checkImport, { files: [much] })).code).toBe("import-too-large");
    for (const part of ["desk", "technician"] as const) {
      expect((await workshop.refused(part, checkImport, { files })).code).toBe("not-allowed");
      expect((await workshop.refused(part, importCatalogue, { files, title: "Mine", seen })).code).toBe(
        "not-allowed",
      );
      expect((await workshop.refused(part, exportCatalogue, { part: null })).code).toBe("not-allowed");
    }
  });
});
