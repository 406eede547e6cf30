"use client";

import { ActionForm } from "@/design/forms/action-form";
import { useFormState } from "@/design/forms/form-context";
import { SubmitButton } from "@/design/forms/submit-button";
import { discardDraftAction, issueAction, makeVersionAction, takeBuildAgainAction } from "./actions";
import { HiddenVersion } from "./hidden-version";

interface Seen {
  readonly versionId: string;
  readonly revision: number;
}

interface IssueFormProps extends Seen {
  readonly versionNo: number;
  /** What is open, a sentence each, as the page knew it when it was drawn. */
  readonly points: readonly string[];
}

/** Issues a draft. What is still open is listed above the button, before and after it is pressed. */
export function IssueForm({ versionNo, points, ...seen }: IssueFormProps) {
  return (
    <ActionForm action={issueAction} label={`Issue version ${versionNo}`}>
      <HiddenVersion {...seen} />
      <OpenPoints points={points} />
      <div className="form-actions">
        <SubmitButton pendingLabel="Issuing">{`Issue version ${versionNo}`}</SubmitButton>
      </div>
    </ActionForm>
  );
}

/** The refusal of the form lists the same points: then they are not said twice. */
function OpenPoints({ points }: Pick<IssueFormProps, "points">) {
  const { state } = useFormState();
  if (state.status === "refused") return null;
  if (points.length === 0)
    return <p>Nothing is open. Read it once more, then issue it: from then on it does not change.</p>;
  return (
    <div className="grid gap-2">
      <p>
        {points.length === 1 ? "One point is open" : `${points.length} points are open`} before this version
        can be issued:
      </p>
      <ul className="grid list-disc gap-1 pl-5">
        {points.map((point) => (
          <li key={point}>{point}</li>
        ))}
      </ul>
    </div>
  );
}

/** Prices a draft anew from its build as it is now. */
export function TakeBuildAgainForm(seen: Seen) {
  return (
    <ActionForm action={takeBuildAgainAction} label="Take the build as it is now">
      <HiddenVersion {...seen} />
      <div className="form-actions">
        <SubmitButton variant="quiet" pendingLabel="Pricing">
          Take the build as it is now
        </SubmitButton>
      </div>
    </ActionForm>
  );
}

/** Copies an issued version into the next draft. */
export function MakeVersionForm({ versionId, next }: { readonly versionId: string; readonly next: number }) {
  return (
    <ActionForm action={makeVersionAction} label={`Make version ${next}`}>
      <input type="hidden" name="versionId" value={versionId} readOnly />
      <div className="form-actions">
        <SubmitButton variant="quiet" pendingLabel="Copying">{`Make version ${next}`}</SubmitButton>
      </div>
    </ActionForm>
  );
}

/** Throws a draft away that follows an issued version. */
export function DiscardDraftForm({ versionNo, ...seen }: Seen & { readonly versionNo: number }) {
  return (
    <ActionForm action={discardDraftAction} label={`Discard draft version ${versionNo}`}>
      <HiddenVersion {...seen} />
      <div className="form-actions">
        <SubmitButton
          variant="danger"
          pendingLabel="Discarding"
        >{`Discard draft version ${versionNo}`}</SubmitButton>
      </div>
    </ActionForm>
  );
}
