import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, test } from "vitest";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { newDraft, newIssued, newLink } from "../testing/quote-story";
import { issueVersion } from "./issue-version";
import { makeVersion } from "./make-version";
import { letterPdf, versionPdf } from "./quote-pdf";
import { showQuote } from "./show-quote";

const trial = demoWorkshop();

/** The text of each page, as a reader extracts it. */
async function pagesOf(bytes: Uint8Array): Promise<readonly string[]> {
  const task = getDocument({ data: new Uint8Array(bytes), useSystemFonts: true });
  const document = await task.promise;
  const pages: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    pages.push(
      items
        .map((item) => ("str" in item ? item.str : ""))
        .join(" ")
        .replace(/\s+/g, " "),
    );
  }
  await task.destroy();
  return pages;
}

describe("the quote on paper", () => {
  test("has its number and version on every page, the lines, the total, the band and the cautions", async () => {
    const { quoteId, number, versionId } = await newIssued(trial);
    const { bytes, fileName } = await trial.done("desk", versionPdf, { versionId });
    expect(fileName).toBe(`quote-${number}-version-1.pdf`);
    const pages = await pagesOf(bytes);
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(page).toContain(`Quote ${number}, version 1`);
    const text = pages.join(" ");
    const { shown } = await trial.done("desk", showQuote, { quoteId });
    const total = (shown.totals.grossMinor / 100).toLocaleString("en-AU", { minimumFractionDigits: 2 });
    expect(text).toContain(total);
    for (const words of [
      "Blower kit 2.4 L/rev",
      shown.site.taxNumber,
      "325",
      "375",
      "Not for road use",
      "GST",
    ])
      expect(text).toContain(words);
  });

  test("of a draft says that it is one, and of a superseded version by which it was replaced", async () => {
    const draft = await newDraft(trial, "dark-trim-pack");
    const paper = async (versionId: string) =>
      (await pagesOf((await trial.done("desk", versionPdf, { versionId })).bytes)).join(" ");
    expect(await paper(draft.versionId)).toContain("Draft: not an offer yet");
    await trial.done("desk", issueVersion, { versionId: draft.versionId, revision: 1 });
    expect(await paper(draft.versionId)).not.toContain("Draft: not an offer");
    const two = await trial.done("desk", makeVersion, { versionId: draft.versionId });
    await trial.done("desk", issueVersion, { versionId: two.versionId, revision: 1 });
    expect(await paper(draft.versionId)).toContain("replaced by version 2");
  });

  test("is the same bytes for the desk and for the customer, whenever it is asked for", async () => {
    const { versionId } = await newIssued(trial, "dark-trim-pack");
    const { customer } = await newLink(trial, versionId);
    const desk = await trial.done("desk", versionPdf, { versionId });
    const later = new Date(demoNow.getTime() + 86_400_000);
    const customers = await trial.done(customer, letterPdf, {}, later);
    expect(Buffer.compare(Buffer.from(desk.bytes), Buffer.from(customers.bytes))).toBe(0);
  });

  test("is not there for another workshop", async () => {
    const { versionId } = await newIssued(trial, "dark-trim-pack");
    expect(await trial.refused("gulfDesk", versionPdf, { versionId })).toMatchObject({
      code: "version-not-found",
    });
  });
});
