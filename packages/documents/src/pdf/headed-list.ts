import { ink } from "./sheet-style";
import type { ListMark, SheetWriter } from "./sheet-writer";

/** A short list stays whole under its heading; a long one may run on to the next page. */
const LONGEST_KEPT_WHOLE = 150;

/** Nothing at all where there is nothing to list. */
export function writeListUnderHeading(
  sheet: SheetWriter,
  heading: string,
  items: readonly string[],
  mark: ListMark = {},
): void {
  if (items.length === 0) return;
  const follows = Math.min(sheet.heightOfList(items), LONGEST_KEPT_WHOLE);
  sheet.heading(heading, 2, { follows, ...(mark.colour === undefined ? {} : { colour: mark.colour }) });
  sheet.list(items, mark);
}

export function writeCautions(sheet: SheetWriter, cautions: readonly string[]): void {
  writeListUnderHeading(sheet, "What to be careful about", cautions, { mark: "!", colour: ink.alarm });
}
