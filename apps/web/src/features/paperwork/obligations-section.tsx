import { Disclosure } from "@/design/disclosure";
import { EmptyState } from "@/design/empty-state";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Moment } from "@/design/moment";
import { Section } from "@/design/sheet";
import { layOutAction } from "./actions";
import { AttachEvidence } from "./attach-evidence";

interface ObligationLine {
  readonly id: string;
  readonly title: string;
  readonly because: string;
  readonly source: string;
  readonly evidenceKind: string;
  readonly signatory: string;
  readonly safety: boolean;
  readonly blocksHandOver: boolean;
  readonly met: boolean;
  readonly attachable: boolean;
  readonly sentence: string;
  readonly evidence: readonly {
    readonly id: string;
    readonly sha256: string;
    readonly name: string;
    readonly note: string;
    readonly signatoryName: string;
    readonly at: Date;
  }[];
}

interface ObligationsSectionProps {
  readonly jobId: string;
  readonly obligations: readonly ObligationLine[];
  readonly notLaidOut: number;
  readonly timeZone: string;
  readonly mayAttach: boolean;
}

/** What promises, safety and law ask of this job, each with its evidence. */
export function ObligationsSection(props: ObligationsSectionProps) {
  const { jobId, obligations, notLaidOut, timeZone, mayAttach } = props;
  const open = obligations.filter(
    ({ met, blocksHandOver, safety }) => !met && (blocksHandOver || safety),
  ).length;
  return (
    <Section title="Obligations" aside={<span className="fine">{holdWords(open)}</span>}>
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
  readonly obligation: ObligationLine;
  readonly timeZone: string;
  readonly mayAttach: boolean;
}

function Line({ obligation, timeZone, mayAttach }: LineProps) {
  const { id, title, because, source, evidenceKind, signatory, sentence, evidence, met } = obligation;
  const holds = !met && (obligation.blocksHandOver || obligation.safety);
  return (
    <li className="sentence" data-weight={holds ? "blocks" : "ordinary"}>
      <div>
        <strong>{standingWords(obligation)}</strong> {title}
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

function standingWords({ met, safety, blocksHandOver }: ObligationLine): string {
  if (met) return "Met:";
  if (safety) return "Open, safety:";
  return blocksHandOver ? "Open:" : "To confirm:";
}

function holdWords(open: number): string {
  if (open === 0) return "none holds the vehicle";
  return open === 1 ? "1 holds the vehicle" : `${open} hold the vehicle`;
}
