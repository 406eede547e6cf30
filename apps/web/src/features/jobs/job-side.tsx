import Link from "next/link";
import { Moment } from "@/design/moment";
import { Money } from "@/design/money";
import { Section, SheetRow } from "@/design/sheet";
import { type ShownObligation, standingWords } from "@/features/paperwork/standing-words";
import { dayText } from "@/features/plan/local-text";
import { SettleFault } from "./settle-fault";

const paymentWords = { deposit: "Deposit", balance: "Balance", refund: "Refund" } as const;

interface MoneySectionProps {
  readonly money: {
    readonly grossMinor: bigint;
    readonly depositMinor: bigint;
    readonly receivedMinor: bigint;
    readonly outstandingMinor: bigint;
    readonly currency: string;
  };
  readonly payments: readonly {
    readonly id: string;
    readonly kind: "deposit" | "balance" | "refund";
    readonly amountMinor: bigint;
    readonly method: string;
    /** Why money went back. */
    readonly reason: string;
    readonly receivedOn: string;
  }[];
  /** Where payments are recorded; null for those who do not see quotes. */
  readonly quoteHref: string | null;
}

export function MoneySection({ money, payments, quoteHref }: MoneySectionProps) {
  const { currency } = money;
  return (
    <Section title="Money" aside={quoteHref && <Link href={quoteHref}>Record a payment</Link>}>
      <div>
        <SheetRow label="Accepted">
          <Money minor={money.grossMinor} currency={currency} /> including tax
        </SheetRow>
        <SheetRow label="Deposit asked">
          <Money minor={money.depositMinor} currency={currency} />
        </SheetRow>
        {payments.map(({ id, kind, amountMinor, method, reason, receivedOn }) => (
          <SheetRow key={id} label={paymentWords[kind]}>
            <Money minor={kind === "refund" ? -amountMinor : amountMinor} currency={currency} />{" "}
            {`by ${method}, ${dayText(receivedOn)}`}
            {reason && <span className="sentence-note">{reason}</span>}
          </SheetRow>
        ))}
        <SheetRow label="Received and held">
          <Money minor={money.receivedMinor} currency={currency} />
        </SheetRow>
        <SheetRow label="Outstanding">
          <Money minor={money.outstandingMinor} currency={currency} />
        </SheetRow>
      </div>
    </Section>
  );
}

interface JobObligationsProps {
  readonly obligations: readonly Pick<ShownObligation, "id" | "title" | "standing" | "sentence">[];
  readonly href: string;
}

/** What the job still has to show, in short; the hand-over page has reasons, sources and files. */
export function JobObligations({ obligations, href }: JobObligationsProps) {
  return (
    <Section title="Obligations" aside={<Link href={href}>Evidence and sources</Link>}>
      {obligations.length === 0 ? (
        <p>None is laid out.</p>
      ) : (
        <ul className="sentences" aria-label="Obligations">
          {obligations.map(({ id, title, standing, sentence }) => (
            <li key={id} className="sentence">
              <div>
                <strong>{standingWords[standing]}</strong> {title}
                <span className="sentence-note">{sentence}</span>
              </div>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}

interface FaultsSectionProps {
  readonly faults: readonly {
    readonly id: string;
    readonly sentence: string;
    readonly photoSha256: string | null;
    readonly raisedAt: Date;
    readonly clearedAt: Date | null;
    readonly clearedBecause: string;
  }[];
  readonly timeZone: string;
  readonly maySettle: boolean;
}

export function FaultsSection({ faults, timeZone, maySettle }: FaultsSectionProps) {
  return (
    <Section title="Faults">
      {faults.length === 0 ? (
        <p>No fault was raised.</p>
      ) : (
        <ol className="sentences" aria-label="Faults">
          {faults.map(({ id, sentence, photoSha256, raisedAt, clearedAt, clearedBecause }) => (
            <li key={id} className="sentence" data-weight={clearedAt ? "ordinary" : "blocks"}>
              <div>
                <strong>{clearedAt ? "Cleared:" : "Open:"}</strong> {sentence}
                <span className="sentence-note">
                  raised <Moment at={raisedAt} timeZone={timeZone} />
                  {clearedAt && `; ${clearedBecause}`}
                </span>
              </div>
              <div className="sentence-action">
                {photoSha256 && <a href={`/api/files/${photoSha256}`}>Photo</a>}
                {maySettle && !clearedAt && <SettleFault faultId={id} sentence={sentence} />}
              </div>
            </li>
          ))}
        </ol>
      )}
    </Section>
  );
}

interface ProgressSectionProps {
  readonly progress: readonly {
    readonly name: string;
    readonly visit: "before" | "main" | "after";
    readonly steps: number;
    readonly done: number;
  }[];
  readonly total: { readonly all: number; readonly done: number };
}

export function ProgressSection({ progress, total }: ProgressSectionProps) {
  return (
    <Section
      title="Job card"
      aside={<span className="fine">{`${total.done} of ${total.all} steps done`}</span>}
    >
      {progress.length === 0 ? (
        <p>This job has no steps.</p>
      ) : (
        <ul className="sentences" aria-label="Progress by operation">
          {progress.map(({ name, visit, steps, done }) => (
            <li key={name} className="sentence">
              <div>
                {name}
                {visit !== "main" && (
                  <span className="sentence-note">
                    {visit === "before" ? "on the inspection visit" : "on the visit after hand-over"}
                  </span>
                )}
              </div>
              <span className="figure">{done === steps ? "done" : `${done} of ${steps}`}</span>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}

interface TimelineProps {
  readonly entries: readonly {
    readonly id: string;
    readonly at: Date;
    readonly who: string;
    readonly sentence: string;
  }[];
  readonly timeZone: string;
}

/** What happened, from the audit record. */
export function Timeline({ entries, timeZone }: TimelineProps) {
  return (
    <Section title="What happened">
      {entries.length === 0 ? (
        <p>Nothing is on record yet.</p>
      ) : (
        <ol className="sentences" aria-label="What happened, newest first">
          {entries.map(({ id, at, who, sentence }) => (
            <li key={id} className="sentence">
              <div>
                {sentence}
                <span className="sentence-note">
                  <Moment at={at} timeZone={timeZone} />, {who}
                </span>
              </div>
            </li>
          ))}
        </ol>
      )}
    </Section>
  );
}
