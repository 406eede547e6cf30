import { drawAddressBlock, drawVehicleLine } from "./address-block";
import { drawCurveFigure } from "./curve-figure";
import type { DocumentFonts } from "./document-fonts";
import { dateInWords, figure, moneyInWords } from "./document-words";
import { writeCautions, writeListUnderHeading } from "./headed-list";
import { drawLetterHead } from "./letter-head";
import type { PowerBandPlot } from "./power-band-plot";
import { promiseInWords } from "./promise-words";
import type { QuoteDocument, QuoteDocumentPromise } from "./quote-document";
import { renderSheet } from "./render-sheet";
import { type Row, ruledTable } from "./ruled-table";
import { content, ink, size } from "./sheet-style";
import type { SheetWriter } from "./sheet-writer";
import { writeTotals } from "./totals-block";

/**
 * A quote as a letter: what was asked, what is proposed, what it will be like, what it costs, what is needed,
 * what to be careful about, and where to sign. The same data gives the same bytes.
 */
export function quotePdf(quote: QuoteDocument, fonts?: DocumentFonts): Promise<Uint8Array> {
  const name = `Quote ${quote.number}, version ${quote.version}`;
  const properties = {
    title: `${name} for ${quote.customer.name}`,
    author: quote.workshop.name,
    running: `${quote.workshop.name} · ${name}`,
    madeAt: quote.issuedAt,
  };
  return renderSheet(properties, (sheet) => writeQuote(sheet, quote, name), fonts);
}

function writeQuote(sheet: SheetWriter, quote: QuoteDocument, name: string): void {
  drawLetterHead(sheet, quote.workshop);
  drawAddressBlock(sheet, quote.customer, [
    ["Quote", quote.number],
    ["Version", String(quote.version)],
    ["Date", dateInWords(quote.issuedOn)],
    ["Valid until", dateInWords(quote.validUntil)],
  ]);
  sheet.heading(name, 1);
  if (quote.notice !== undefined) sheet.paragraph(quote.notice, { face: "bold", colour: ink.alarm });
  drawVehicleLine(sheet, quote.vehicle);
  sheet.heading("What you asked for", 2);
  sheet.paragraph(quote.asked);
  sheet.heading("What we propose", 2);
  sheet.paragraph(quote.proposed);
  if (quote.promise !== undefined) writePromise(sheet, quote.promise);
  writePrice(sheet, quote);
  writeNeeds(sheet, quote);
  writeLists(sheet, quote);
  writeAcceptance(sheet, quote);
}

function writePromise(sheet: SheetWriter, promise: QuoteDocumentPromise): void {
  sheet.heading("What it will be like", 2);
  sheet.paragraph(promiseInWords(promise), { face: "bold", size: 14 }, 1);
  sheet.paragraph(
    `Under these conditions: ${promise.referenceCondition}. Proven by three corrected runs before you pay the balance.`,
  );
  if (promise.plot !== undefined) drawForecast(sheet, promise, promise.plot);
  sheet.paragraph(promise.remedy);
}

function drawForecast(sheet: SheetWriter, promise: QuoteDocumentPromise, plot: PowerBandPlot): void {
  const best = plot.baseline.reduce((most, point) => (point.kw > most.kw ? point : most), {
    speedRpm: 0,
    kw: 0,
  });
  drawCurveFigure(sheet, {
    unit: `kW at the ${promise.at}`,
    height: 168,
    curves: [
      {
        label: `now, ${figure(best.kw, 0)} kW`,
        pattern: "dashed",
        points: plot.baseline.map(({ speedRpm, kw }) => ({ speedRpm, value: kw })),
      },
    ],
    band: {
      label: `forecast, ${figure(promise.lowKw, 0)}–${figure(promise.highKw, 0)} kW`,
      points: plot.band.map(({ speedRpm, lowKw, highKw }) => ({ speedRpm, low: lowKw, high: highKw })),
    },
    alt: `Power over engine speed. Now at most ${figure(best.kw, 0)} kW at ${best.speedRpm} rpm; the forecast is a band that peaks at ${promiseInWords(promise)}.`,
  });
}

function writePrice(sheet: SheetWriter, quote: QuoteDocument): void {
  const money = (minor: number) => moneyInWords(minor, quote.currency);
  sheet.heading("What it costs", 2);
  const rows: Row[] = quote.sections.flatMap(({ heading, lines }) => [
    { cells: [heading], group: true },
    ...lines.map(({ description, detail, quantity, grossMinor }) => ({
      cells: [
        detail === undefined ? description : { text: description, detail },
        quantity,
        money(grossMinor),
      ],
    })),
  ]);
  ruledTable(
    sheet,
    [
      { heading: "Item or work", share: 66 },
      { heading: "Quantity", share: 14, align: "right" },
      { heading: `Price incl. ${quote.taxName}`, share: 20, align: "right" },
    ],
    rows,
  );
  const discount = quote.discountMinor ?? 0;
  writeTotals(sheet, [
    ...(discount === 0
      ? []
      : [{ word: `Discount without ${quote.taxName}, included above`, amount: `−${money(discount)}` }]),
    { word: "Total without tax", amount: money(quote.netMinor) },
    { word: quote.taxName, amount: money(quote.taxMinor) },
    { word: `Total incl. ${quote.taxName}`, amount: money(quote.grossMinor), strong: true },
  ]);
}

function writeNeeds(sheet: SheetWriter, quote: QuoteDocument): void {
  const { deposit, earliest } = quote;
  if (earliest !== undefined) {
    sheet.heading("When", 2);
    sheet.paragraph(earliest);
  }
  if (deposit === undefined) return;
  sheet.heading("What we need from you", 2);
  sheet.paragraph(`A deposit of ${moneyInWords(deposit.grossMinor, quote.currency)}. ${deposit.covers}`);
}

function writeLists(sheet: SheetWriter, quote: QuoteDocument): void {
  writeListUnderHeading(sheet, "What this rests on", quote.assumptions);
  writeListUnderHeading(sheet, "What is not included", quote.exclusions);
  writeCautions(sheet, quote.cautions);
}

function writeAcceptance(sheet: SheetWriter, quote: QuoteDocument): void {
  sheet.keep(150);
  sheet.heading("How to accept", 2);
  for (const sentence of quote.acceptance) sheet.paragraph(sentence, {}, 2);
  if (quote.acceptanceLink !== undefined) sheet.paragraph(quote.acceptanceLink, { colour: ink.accent });
  sheet.paragraph(
    `Or sign here for quote ${quote.number}, version ${quote.version}, and hand it in by ${dateInWords(quote.validUntil)}.`,
    {},
    26,
  );
  drawSignatureLines(sheet, ["Name", "Signature", "Date"]);
}

function drawSignatureLines(sheet: SheetWriter, words: readonly string[]): void {
  const width = (content.width - 20 * (words.length - 1)) / words.length;
  sheet.artifact(() => {
    words.forEach((_, index) => {
      const x = content.left + index * (width + 20);
      sheet.doc
        .moveTo(x, sheet.y)
        .lineTo(x + width, sheet.y)
        .lineWidth(0.6)
        .strokeColor(ink.black)
        .stroke();
    });
  });
  words.forEach((word, index) => {
    const box = { x: content.left + index * (width + 20), y: sheet.y + 3, width };
    sheet.marked("P", () => sheet.put(word, box, { size: size.small, colour: ink.faint }));
  });
  sheet.space(20);
}
