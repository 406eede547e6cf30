import type { PartKind } from "@buildproof/workshop";

export const partTitles: Readonly<Record<PartKind, string>> = {
  item: "Items",
  rule: "Rules",
  group: "Groups",
  operation: "Operations",
  access: "Access work",
  package: "Packages",
};

export const onePart: Readonly<Record<PartKind, string>> = {
  item: "item",
  rule: "rule",
  group: "group",
  operation: "operation",
  access: "access work",
  package: "package",
};

/** In the address of a part that is not there yet; no code can be that. */
export const newPart = "_new";

type Version = {
  readonly number: number | null;
  readonly title: string;
  readonly state: "draft" | "scheduled" | "published";
};

/** "Version 12: Dearer coolers", "Draft: Dearer coolers". */
export function versionName({ number, title, state }: Version): string {
  if (number !== null) return `Version ${number}: ${title}`;
  return state === "scheduled" ? `Waiting: ${title}` : `Draft: ${title}`;
}

export function partHref(part: PartKind, code: string): string {
  return part === "package" ? `/catalogue/packages/${code}` : `/catalogue/${part}/${code}`;
}

export function editHref(versionId: string, part: PartKind, code: string): string {
  return part === "package"
    ? `/catalogue/packages/${code}?draft=${versionId}`
    : `/catalogue/versions/${versionId}/${part}/${code}`;
}
