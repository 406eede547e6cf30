import { describe, expect, test } from "vitest";
import type { QuoteDocument } from "./quote-document";
import { quotePdf } from "./quote-pdf";
import { readPdf } from "./read-pdf";
import { sampleQuote } from "./sample-quote";

const read = async (quote: QuoteDocument) => readPdf(await quotePdf(quote));
/** Words as read, with line ends and runs of blanks made one blank. */
const words = (pages: readonly string[]) => pages.join(" ").replace(/\s+/g, " ");

describe("a quote as a letter", () => {
  test("says who offers what to whom, for which vehicle, at which price and until when", async () => {
    const text = words((await read(sampleQuote)).pages);
    for (const said of [
      "Saltbush Dyno & Driveline",
      "ABN 47 555 222 000",
      "14 Quandong Road",
      "(08) 5550 1234",
      "Łucja Okafor-Nguyễn",
      "Kerrow Ridgewold 5.7, 4WD wagon",
      "VIN 7ZZKR57W1R0000421",
      "24,310 km",
      "Quote 1042, version 2",
      "25 November 2025",
      "9 December 2025",
      "Tow a 3.0 t boat to the Gulf",
      "Long Grade 2.4: a 2.4 L blower",
      "Blower kit 2.4 L/rev, 92 mm pulley",
      "$16,390.00",
      "39.2 h",
      "Total without tax",
      "$33,129.00",
      "GST",
      "$3,312.90",
      "Total incl. GST",
      "$36,441.90",
      "A deposit of $18,220.95",
      "cannot be returned",
      "350–390 kW at the hubs",
      "25 °C, sea level, corrected to SAE J1349",
      "You buy petrol 98",
      "Seized or broken fasteners",
      "Tell your insurer",
      "https://saltbush.example/q/1042",
      "Signature",
    ]) {
      expect(text).toContain(said);
    }
  });

  test("carries number, version and page on every page", async () => {
    const { pages } = await read(sampleQuote);
    expect(pages.length).toBeGreaterThan(1);
    pages.forEach((page, index) => {
      expect(page).toContain("Quote 1042, version 2");
      expect(page).toContain(`page ${index + 1} of ${pages.length}`);
    });
  });

  test("is tagged, in a stated language, with a table, lists and a figure that is told in words", async () => {
    const { tagged, language, structure, alternatives } = await read(sampleQuote);
    expect(tagged).toBe(true);
    expect(language).toBe("en-AU");
    expect(structure).toEqual(
      expect.arrayContaining([
        "Document",
        "H1",
        "H2",
        "P",
        "Table",
        "TR",
        "TH",
        "TD",
        "L",
        "LI",
        "LBody",
        "Figure",
      ]),
    );
    expect(structure.filter((role) => role === "H1")).toHaveLength(1);
    expect(alternatives).toEqual([
      expect.stringContaining("the forecast is a band that peaks at 350–390 kW at the hubs"),
    ]);
  });

  test("is the same bytes for the same data, and other bytes for another version", async () => {
    const [once, again, other] = await Promise.all([
      quotePdf(sampleQuote),
      quotePdf(structuredClone(sampleQuote)),
      quotePdf({ ...sampleQuote, version: 3 }),
    ]);
    expect(Buffer.compare(once, again)).toBe(0);
    expect(Buffer.compare(once, other)).not.toBe(0);
  });

  test("that was superseded says so", async () => {
    const { pages } = await read({ ...sampleQuote, notice: "Superseded by version 3." });
    expect(words(pages)).toContain("Superseded by version 3.");
  });

  test("leaves out what there is nothing of", async () => {
    const { promise, deposit, earliest, acceptanceLink, ...plain } = sampleQuote;
    expect([promise, deposit, earliest, acceptanceLink]).not.toContain(undefined);
    const { pages, alternatives } = await read({ ...plain, exclusions: [], customer: { name: "A. Nobody" } });
    const text = words(pages);
    expect(alternatives).toEqual([]);
    for (const heading of ["What it will be like", "What we need from you", "What is not included"])
      expect(text).not.toContain(heading);
    expect(text).toContain("What it costs");
  });

  test("shows a discount", async () => {
    expect(words((await read({ ...sampleQuote, discountMinor: 50_000 })).pages)).toContain("−$500.00");
  });
});

describe("a quote at its limits", () => {
  test("of three hundred lines repeats the table's head and cuts no line in two", async () => {
    const lines = Array.from({ length: 300 }, (_, index) => ({
      description: `Line ${index + 1}: ${"a part with a long name ".repeat(5)}end ${index + 1}`,
      quantity: "1",
      grossMinor: 100,
    }));
    const { pages } = await read({ ...sampleQuote, sections: [{ heading: "Parts", lines }] });
    const tablePages = pages.filter((page) => /Line \d+:/.test(page));
    expect(tablePages.length).toBeGreaterThan(10);
    for (const page of tablePages) {
      expect(page).toContain("Item or work");
      const flat = page.replace(/\s+/g, " ");
      const starts = [...flat.matchAll(/Line (\d+):/g)].map((match) => match[1]);
      const ends = [...flat.matchAll(/end (\d+)/g)].map((match) => match[1]);
      expect(starts).toEqual(ends);
    }
  });

  test("of a very long wish runs on to the next page without losing a word", async () => {
    const asked = Array.from({ length: 2_000 }, (_, index) => `word${index}`).join(" ");
    const text = words((await read({ ...sampleQuote, asked })).pages);
    expect(text.match(/word\d+/g)).toHaveLength(2_000);
  });

  test.each([
    ["a day that is not a date", { ...sampleQuote, validUntil: "9/12/2025" }],
    ["an instant that is none", { ...sampleQuote, issuedAt: "yesterday" }],
    ["half a cent", { ...sampleQuote, grossMinor: 0.5 }],
    [
      "a promise whose band is upside down",
      {
        ...sampleQuote,
        promise: { at: "hubs", lowKw: 390, highKw: 350, referenceCondition: "", remedy: "" },
      },
    ],
  ] as const)("with %s is refused rather than printed", async (_what, quote) => {
    await expect((async () => quotePdf(quote))()).rejects.toThrow(RangeError);
  });
});
