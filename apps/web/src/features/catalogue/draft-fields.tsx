interface DraftFieldsProps {
  readonly version: { readonly id: string; readonly revision: number };
  readonly part?: string;
  /** Null for a part that is not there yet. */
  readonly code?: string | null;
}

/** What every form that writes into a draft sends along. */
export function DraftFields({ version, part, code }: DraftFieldsProps) {
  return (
    <>
      <input type="hidden" name="versionId" value={version.id} readOnly />
      <input type="hidden" name="revision" value={version.revision} readOnly />
      {part !== undefined && <input type="hidden" name="part" value={part} readOnly />}
      {code !== undefined && code !== null && <input type="hidden" name="code" value={code} readOnly />}
      {code === null && <input type="hidden" name="isNew" value="yes" readOnly />}
    </>
  );
}
