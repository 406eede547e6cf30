import { wholeNumber } from "./document-words";
import { content, ink, size } from "./sheet-style";
import type { SheetWriter } from "./sheet-writer";
import type { DocumentCustomer, DocumentVehicle } from "./vehicle-lines";

/** What the document is, in pairs of a word and its value. */
export type Particulars = readonly (readonly [word: string, value: string])[];

/** Whom the document is for on the left, what it is on the right. */
export function drawAddressBlock(
  sheet: SheetWriter,
  customer: DocumentCustomer,
  particulars: Particulars,
): void {
  const top = sheet.y;
  const half = content.width / 2;
  const lines = [customer.name, ...(customer.address ?? []), customer.phone, customer.email];
  const block = lines.filter((line) => line !== undefined && line !== "").join("\n");
  sheet.marked("P", () => sheet.put(block, { x: content.left, y: top, width: half - 10 }));
  const left = sheet.doc.y;
  let y = top;
  for (const [word, value] of particulars) {
    const wordBox = { x: content.left + half, y, width: 70 };
    const valueBox = { x: content.left + half + 75, y, width: half - 75 };
    sheet.marked("P", () => {
      sheet.put(word, wordBox, { colour: ink.faint });
      sheet.put(value, valueBox, { face: "bold" });
    });
    y = sheet.doc.y;
  }
  sheet.y = Math.max(left, y) + 12;
}

/** The vehicle on one ruled line. */
export function drawVehicleLine(sheet: SheetWriter, vehicle: DocumentVehicle): void {
  const facts = [
    vehicle.plate === undefined ? null : `plate ${vehicle.plate}`,
    vehicle.vin === undefined ? null : `VIN ${vehicle.vin}`,
    vehicle.odometerKm === undefined ? null : `${wholeNumber(vehicle.odometerKm)} km`,
    vehicle.fuel === undefined ? null : `fuel ${vehicle.fuel}`,
  ].filter((fact) => fact !== null);
  sheet.paragraph(vehicle.description, { face: "bold" }, 0);
  if (facts.length > 0) sheet.paragraph(facts.join(" · "), { size: size.small, colour: ink.soft }, 4);
  sheet.rule();
  sheet.space(4);
}
