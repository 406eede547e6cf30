import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Section } from "@/design/sheet";
import { AttachDocument } from "./attach-document";
import { removeDocumentAction } from "./document-actions";

interface ItemDocumentsProps {
  readonly code: string;
  readonly documents: readonly {
    readonly id: string;
    readonly title: string;
    readonly sha256: string;
    readonly sizeBytes: number;
  }[];
  readonly mayWrite: boolean;
}

/** Sheets, drawings and certificates that belong to an item. */
export function ItemDocuments({ code, documents, mayWrite }: ItemDocumentsProps) {
  return (
    <Section title="Documents" aside={mayWrite && <AttachDocument code={code} />}>
      {documents.length === 0 && <p className="text-ink-soft">None yet.</p>}
      <ul className="sentences" aria-label="Documents">
        {documents.map(({ id, title, sha256, sizeBytes }) => (
          <li key={id} className="sentence">
            <span>
              <a href={`/api/files/${sha256}`}>{title}</a>{" "}
              <span className="text-ink-soft">{Math.max(1, Math.round(sizeBytes / 1024))} kB</span>
            </span>
            {mayWrite && (
              <ActionForm action={removeDocumentAction} label={`Remove ${title}`}>
                <input type="hidden" name="documentId" value={id} readOnly />
                <SubmitButton variant="plain" pendingLabel="Removing">
                  Remove
                </SubmitButton>
              </ActionForm>
            )}
          </li>
        ))}
      </ul>
    </Section>
  );
}
