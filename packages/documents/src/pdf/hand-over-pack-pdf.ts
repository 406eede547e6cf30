import { drawAddressBlock, drawVehicleLine } from "./address-block";
import type { DocumentFonts } from "./document-fonts";
import { dateInWords, figure } from "./document-words";
import { writeDynoSection } from "./dyno-section";
import type { HandOverPackDocument } from "./hand-over-pack-document";
import { writeCautions, writeListUnderHeading } from "./headed-list";
import { drawLetterHead } from "./letter-head";
import { renderSheet } from "./render-sheet";
import { type Column, type Row, ruledTable } from "./ruled-table";
import type { SheetWriter } from "./sheet-writer";

/** What goes with the keys: what was done, with which parts, how tight, what it makes, who certified it, and what to mind. */
export function handOverPackPdf(pack: HandOverPackDocument, fonts?: DocumentFonts): Promise<Uint8Array> {
  const name = `Hand-over pack, job ${pack.jobNumber}`;
  const properties = {
    title: `${name}, ${pack.vehicle.description}`,
    author: pack.workshop.name,
    running: `${pack.workshop.name} · ${name}`,
    madeAt: pack.madeAt,
  };
  return renderSheet(properties, (sheet) => writePack(sheet, pack), fonts);
}

function writePack(sheet: SheetWriter, pack: HandOverPackDocument): void {
  drawLetterHead(sheet, pack.workshop);
  drawAddressBlock(sheet, pack.customer, [
    ["Job", pack.jobNumber],
    ["Quote", `${pack.quote.number}, version ${pack.quote.version}`],
    ["Handed over", dateInWords(pack.handedOverOn)],
  ]);
  sheet.heading("Hand-over pack", 1);
  drawVehicleLine(sheet, pack.vehicle);
  writeListUnderHeading(sheet, "What was done", pack.workDone);
  writeTable(sheet, "Parts fitted", partColumns, pack.parts.map(partRow));
  if (pack.dyno !== undefined) {
    sheet.heading("What it makes", 2, { follows: 240 });
    writeDynoSection(sheet, pack.dyno);
  }
  writeTable(sheet, "Torques and measurements", loggedColumns, pack.torques.map(loggedRow));
  writeTable(sheet, "Certificates", certificateColumns, pack.certificates.map(certificateRow));
  writeCautions(sheet, pack.cautions);
  writeListUnderHeading(
    sheet,
    "What comes next",
    pack.followUps.map(({ what, when }) => `${what}: ${when}`),
  );
}

function writeTable(
  sheet: SheetWriter,
  heading: string,
  columns: readonly Column[],
  rows: readonly Row[],
): void {
  if (rows.length === 0) return;
  sheet.heading(heading, 2, { follows: 60 });
  ruledTable(sheet, columns, rows);
}

const partColumns: readonly Column[] = [
  { heading: "Part", share: 46 },
  { heading: "Maker and number", share: 27 },
  { heading: "Serial or licence", share: 27 },
];
const partRow = ({ name, code, serial = "" }: HandOverPackDocument["parts"][number]): Row => ({
  cells: [name, code, serial],
});

const loggedColumns: readonly Column[] = [
  { heading: "Joint or measurement", share: 42 },
  { heading: "Value", share: 14, align: "right" },
  { heading: "Limits", share: 17, align: "right" },
  { heading: "By", share: 27 },
];
const loggedRow = (logged: HandOverPackDocument["torques"][number]): Row => ({
  cells: [
    logged.what,
    `${figure(logged.value, 2)} ${logged.unit}`,
    `${figure(logged.low, 2)} to ${figure(logged.high, 2)}`,
    { text: logged.by, detail: logged.at },
  ],
});

const certificateColumns: readonly Column[] = [
  { heading: "Certificate", share: 34 },
  { heading: "Number", share: 20 },
  { heading: "Signed by", share: 22 },
  { heading: "On", share: 24 },
];
const certificateRow = ({
  name,
  number,
  signedBy,
  on,
}: HandOverPackDocument["certificates"][number]): Row => ({
  cells: [name, number, signedBy, dateInWords(on)],
});
