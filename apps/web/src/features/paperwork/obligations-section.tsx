import { Disclosure } from "@/design/disclosure";
import { EmptyState } from "@/design/empty-state";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Moment } from "@/design/moment";
import { Section } from "@/design/sheet";
import { layOutAction } from "./actions";
import { AttachEvidence } from "./attach-evidence";
import { type ShownObligation, standingWords } from "./standing-words";

interface ObligationsSectionProps {
  readonly jobId: string;
  readonly obligations: readonly ShownObligation[];
  /** How many of them hold the vehicle back. */
  readonly holding: number;
  readonly notLaidOut: number;
  readonly timeZone: string;
  readonly mayAttach: boolean;
}

/** What promises, safety and law ask of this job, each with its evidence. */
export function ObligationsSection(props: ObligationsSectionProps) {
  const { jobId, obligations, holding, notLaidOut, timeZone, mayAttach } = props;
  return (
    <Section title="Obligations" aside={<span className="fine">{holdWords(holding)}</span>}>
      {obligations.length === 0 ? (
        <EmptyState sentence="No obligation is laid out for this job." />
      ) : (
        <ul className="sentences" aria-label="Obligations">
          {obligations.map((obligation) => (
            <Line key={obligation.id} obligation={obligation} timeZone={timeZone} mayAttach={mayAttach} />
          ))}
        </ul>
      )}
      {notLaidOut > 0 && mayAttach && (
        <ActionForm action={layOutAction} label="Lay out the obligations">
          <input type="hidden" name="jobId" value={jobId} readOnly />
          <p>{`${notLaidOut} more follow from what was accepted and are not listed yet.`}</p>
          <div className="form-actions">
            <SubmitButton variant="quiet">Lay them out</SubmitButton>
          </div>
        </ActionForm>
      )}
      <p className="fine">
        Rules of law are listed as far as they are known here. Confirm each with the authority or a licensed
        signatory.
      </p>
    </Section>
  );
}

interface LineProps {
  readonly obligation: ShownObligation;
  readonly timeZone: string;
  readonly mayAttach: boolean;
}

function Line({ obligation, timeZone, mayAttach }: LineProps) {
  const { id, title, because, source, evidenceKind, signatory, sentence, evidence, standing } = obligation;
  const holds = standing === "open" || standing === "open-safety";
  return (
    <li className="sentence" data-weight={holds ? "blocks" : "ordinary"}>
      <div>
        <strong>{standingWords[standing]}</strong> {title}
        <span className="sentence-note">{sentence}</span>
        {evidence.length > 0 && (
          <ul className="obligation-evidence">
            {evidence.map(({ id: evidenceId, sha256, name, note, at }) => (
              <li key={evidenceId}>
                <a href={`/api/files/${sha256}`}>{name}</a>, <Moment at={at} timeZone={timeZone} />
                {note && <span className="sentence-note">{note}</span>}
              </li>
            ))}
          </ul>
        )}
        <Disclosure title="Why, and from where" level={3}>
          <p>{because}</p>
          <p className="fine">{`Source: ${source}`}</p>
          {signatory && <p className="fine">{`Signed by: ${signatory}.`}</p>}
        </Disclosure>
      </div>
      {mayAttach && obligation.attachable && (
        <div className="sentence-action">
          <AttachEvidence obligationId={id} title={title} asksSignatory={evidenceKind === "certificate"} />
        </div>
      )}
    </li>
  );
}

function holdWords(open: number): string {
  if (open === 0) return "none holds the vehicle";
  return open === 1 ? "1 holds the vehicle" : `${open} hold the vehicle`;
}
