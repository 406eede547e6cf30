import { content, ink, size } from "./sheet-style";
import type { SheetWriter } from "./sheet-writer";

/** The workshop as it stands at the head of every document it sends. */
export interface LetterHead {
  readonly name: string;
  /** Its number for tax as the law calls it, such as "ABN 47 555 222 000". */
  readonly taxNumber: string;
  /** One line each, as on an envelope. */
  readonly address: readonly string[];
  readonly phone: string;
  readonly email: string;
}

export function drawLetterHead(sheet: SheetWriter, workshop: LetterHead): void {
  const half = content.width / 2;
  const top = sheet.y;
  sheet.marked("P", () =>
    sheet.put(
      workshop.name,
      { x: content.left, y: top, width: half },
      { face: "bold", size: 13, colour: ink.accent },
    ),
  );
  const belowName = sheet.doc.y;
  sheet.marked("P", () =>
    sheet.put(
      workshop.taxNumber,
      { x: content.left, y: belowName, width: half },
      { size: size.small, colour: ink.soft },
    ),
  );
  const left = sheet.doc.y;
  const contact = [...workshop.address, `${workshop.phone} · ${workshop.email}`].join("\n");
  const beside = { x: content.left + half, y: top + 1.5, width: half };
  sheet.marked("P", () => sheet.put(contact, beside, { size: size.small, colour: ink.soft, align: "right" }));
  sheet.y = Math.max(left, sheet.doc.y) + 6;
  sheet.rule(ink.accent, 1.2);
  sheet.space(14);
}
