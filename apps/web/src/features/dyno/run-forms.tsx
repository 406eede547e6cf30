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
      <RunForm
        runs={counted}
        action={excludeRunAction}
        words={["Leave a run out", "of", "Leave it out", "Leaving it out"]}
        help="What went wrong in it: a shift, a slip, a lift. Not that it is the lowest."
        title={title}
      />
      <RunForm
        runs={left}
        action={countRunAgainAction}
        words={["Count a run again", "in", "Count it again", "Counting it"]}
        help="Why it was left out by mistake."
        title={title}
      />
    </div>
  );
}

interface RunFormProps {
  readonly runs: SessionView["runs"];
  readonly action: typeof excludeRunAction;
  /** What it does, of or in what, what the button says, and what it says while it waits. */
  readonly words: readonly [does: string, joined: string, button: string, pending: string];
  readonly help: string;
  readonly title: string;
}

function RunForm({ runs, action, words: [does, joined, button, pending], help, title }: RunFormProps) {
  if (runs.length === 0) return null;
  return (
    <Disclosure
      title={
        <>
          {does}
          <span className="visually-hidden">
            {" "}
            {joined} {title}
          </span>
        </>
      }
    >
      <ActionForm action={action} label={`${does}: ${title}`} resetOnSaved>
        <RunFields runs={runs} help={help} />
        <SubmitButton variant="quiet" pendingLabel={pending}>
          {button}
        </SubmitButton>
      </ActionForm>
    </Disclosure>
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
