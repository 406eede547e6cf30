/** An address, seen as a draft would have the catalogue. */
export function inDraft(path: string, versionId: string | null): string {
  return versionId === null ? path : `${path}?draft=${versionId}`;
}
