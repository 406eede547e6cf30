import { drawAddressBlock, drawVehicleLine } from "./address-block";
import type { DocumentFonts } from "./document-fonts";
import { dateInWords } from "./document-words";
import type { DynoFigures } from "./dyno-figures";
import { writeDynoSection } from "./dyno-section";
import { drawLetterHead, type LetterHead } from "./letter-head";
import { renderSheet } from "./render-sheet";
import type { DocumentCustomer, DocumentVehicle } from "./vehicle-lines";

/** What the dyno found, for the owner and for a signatory. It certifies a measurement, not that the vehicle is legal. */
export interface DynoCertificateDocument {
  readonly workshop: LetterHead;
  readonly customer: DocumentCustomer;
  readonly vehicle: DocumentVehicle;
  readonly jobNumber: string;
  readonly dyno: DynoFigures;
  readonly operator: string;
  readonly issuedOn: string;
  readonly madeAt: string;
}

export function dynoCertificatePdf(
  certificate: DynoCertificateDocument,
  fonts?: DocumentFonts,
): Promise<Uint8Array> {
  const name = `Dyno certificate, job ${certificate.jobNumber}`;
  const { workshop, customer, vehicle } = certificate;
  const properties = {
    title: `${name}, ${vehicle.description}`,
    author: workshop.name,
    running: `${workshop.name} · ${name}`,
    madeAt: certificate.madeAt,
  };
  return renderSheet(
    properties,
    (sheet) => {
      drawLetterHead(sheet, workshop);
      drawAddressBlock(sheet, customer, [
        ["Job", certificate.jobNumber],
        ["Issued", dateInWords(certificate.issuedOn)],
        ["Operator", certificate.operator],
      ]);
      sheet.heading("Dyno certificate", 1);
      drawVehicleLine(sheet, vehicle);
      sheet.space(6);
      writeDynoSection(sheet, certificate.dyno);
      sheet.paragraph(
        "This certifies a measurement. Whether the vehicle may be driven on the road is for the authority and its licensed signatory to say.",
      );
    },
    fonts,
  );
}
