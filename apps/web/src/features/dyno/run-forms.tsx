import type { SessionView } from "@buildproof/workshop";
import { Disclosure } from "@/design/disclosure";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { countRunAgainAction, excludeRunAction } from "./actions";

interface RunFormsProps {
  readonly session: SessionView;
  readonly title: string;
}

/** Leaves a run out of the figures, or counts it again. It stays in the record either way, with the reason. */
export function RunForms({ session: { runs }, title }: RunFormsProps) {
  const counted = runs.filter(({ excludedBecause }) => excludedBecause === null);
  const left = runs.filter(({ excludedBecause, isBarred }) => excludedBecause !== null && !isBarred);
  return (
    <div className="no-print">
      {counted.length > 0 && (
        <Disclosure
          title={
            <>
              Leave a run out<span className="visually-hidden"> of {title}</span>
            </>
          }
        >
          <ActionForm action={excludeRunAction} label={`Leave a run out: ${title}`} resetOnSaved>
            <RunFields
              runs={counted}
              help="What went wrong in it: a shift, a slip, a lift. Not that it is the lowest."
            />
            <SubmitButton variant="quiet" pendingLabel="Leaving it out">
              Leave it out
            </SubmitButton>
          </ActionForm>
        </Disclosure>
      )}
      {left.length > 0 && (
        <Disclosure
          title={
            <>
              Count a run again<span className="visually-hidden"> in {title}</span>
            </>
          }
        >
          <ActionForm action={countRunAgainAction} label={`Count a run again: ${title}`} resetOnSaved>
            <RunFields runs={left} help="Why it was left out by mistake." />
            <SubmitButton variant="quiet" pendingLabel="Counting it">
              Count it again
            </SubmitButton>
          </ActionForm>
        </Disclosure>
      )}
    </div>
  );
}

function RunFields({ runs, help }: { readonly runs: SessionView["runs"]; readonly help: string }) {
  return (
    <div className="form-row">
      <Select
        name="runId"
        label="Run"
        options={runs.map(({ id, number, peakKw }) => ({
          id,
          label: `Run ${number}, ${peakKw.toFixed(1)} kW`,
        }))}
        isRequired
      />
      <TextField name="reason" label="Because" help={help} maxLength={300} isRequired />
    </div>
  );
}
