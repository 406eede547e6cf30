import type { ChangeInWords } from "@buildproof/workshop";
import Link from "next/link";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Notice } from "@/design/notice";
import { keepChangeAction, undoChangeAction } from "./actions";
import { editHref, onePart, partHref } from "./catalogue-words";
import { changeKind, DifferenceList } from "./difference-list";
import { DraftFields } from "./draft-fields";

type Change = ChangeInWords & { readonly theirs: ChangeInWords["differences"] | null };

interface ChangeSectionsProps {
  readonly version: { readonly id: string; readonly revision: number };
  readonly changes: readonly Change[];
  /** A draft that this person may change. */
  readonly isOpen: boolean;
}

/** What a version changes, part by part, in words and figures. */
export function ChangeSections({ version, changes, isOpen }: ChangeSectionsProps) {
  return changes.map((change) => {
    const { part, code, name, kind, differences, theirs } = change;
    const href = isOpen ? editHref(version.id, part, code) : partHref(part, code);
    return (
      <article key={`${part} ${code}`} className="grid gap-2" aria-label={name}>
        <div className="flex flex-wrap items-baseline justify-between gap-x-4">
          <h3>
            <Link href={href}>{name}</Link>{" "}
            <span className="font-normal text-ink-soft">
              {onePart[part]}, {changeKind(kind)}
            </span>
          </h3>
          {isOpen && (
            <ActionForm action={undoChangeAction} label={`Undo: ${name}`}>
              <DraftFields version={version} part={part} code={code} />
              <SubmitButton variant="plain" pendingLabel="Undoing">
                Undo
              </SubmitButton>
            </ActionForm>
          )}
        </div>
        <DifferenceList caption={`What changes of ${name}`} differences={differences} />
        {theirs && <Overtaken version={version} change={change} isOpen={isOpen} />}
      </article>
    );
  });
}

function Overtaken({
  version,
  change: { part, code, name, theirs },
  isOpen,
}: Pick<ChangeSectionsProps, "version" | "isOpen"> & { readonly change: Change }) {
  return (
    <Notice title="The catalogue changed this since the draft was written" kind="blocks">
      <DifferenceList caption={`What became of ${name}`} differences={theirs ?? []} />
      {isOpen && (
        <div className="form-actions">
          <ActionForm action={keepChangeAction} label={`Keep mine: ${name}`}>
            <DraftFields version={version} part={part} code={code} />
            <SubmitButton variant="quiet" pendingLabel="Keeping">
              Keep mine
            </SubmitButton>
          </ActionForm>
          <ActionForm action={undoChangeAction} label={`Take theirs: ${name}`}>
            <DraftFields version={version} part={part} code={code} />
            <SubmitButton variant="quiet" pendingLabel="Taking">
              Take theirs
            </SubmitButton>
          </ActionForm>
        </div>
      )}
    </Notice>
  );
}
