/** Which version a form is about, and the state of it that the person had before their eyes. */
export function HiddenVersion({
  versionId,
  revision,
}: {
  readonly versionId: string;
  readonly revision: number;
}) {
  return (
    <>
      <input type="hidden" name="versionId" value={versionId} readOnly />
      <input type="hidden" name="revision" value={revision} readOnly />
    </>
  );
}
