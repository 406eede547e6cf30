import type { ReactNode } from "react";
import { momentText } from "@/design/moment-text";
import { moneyText } from "@/design/money-text";
import { Notice } from "@/design/notice";
import { en } from "@/messages/en";
import { dayText } from "./day-text";
import { AcceptForm, DeclineForm } from "./letter-forms";
import type { ShownLetter } from "./shown-letter";

interface LetterAnswerProps {
  readonly letter: ShownLetter;
  readonly token: string;
  /** What became of the quote is said above it; the answer is given below it, after reading. */
  readonly place: "above" | "below";
}

/** Where the customer's answer is given, or what became of the quote. */
export function LetterAnswer({ letter, token, place }: LetterAnswerProps): ReactNode {
  if (place === "above") return <Became letter={letter} />;
  if (letter.status !== "issued") return null;
  const { number, versionNo, totals, currency, workshop, validUntil } = letter;
  return (
    <section className="no-print grid gap-4 border-t border-ink pt-4" aria-labelledby="accept">
      <h2 id="accept">{en.accept.title}</h2>
      <p>{en.accept.lead({ until: dayText(validUntil) })}</p>
      <AcceptForm
        token={token}
        versionId={letter.id}
        statement={en.accept.statement({
          number,
          version: versionNo,
          total: moneyText(totals.grossMinor, currency),
          tax: workshop.taxName,
          workshop: workshop.name,
        })}
      />
      <DeclineForm token={token} versionId={letter.id} />
    </section>
  );
}

function Became({ letter }: { readonly letter: ShownLetter }): ReactNode {
  const { state } = en;
  const { acceptance, workshop, jobNumber } = letter;
  switch (letter.status) {
    case "accepted": {
      if (!acceptance) return null;
      const when = momentText(acceptance.at, workshop.timeZone);
      const deposit = moneyText(letter.deposit.dueMinor, letter.currency);
      return (
        <Notice kind="saved" title={state.accepted({ name: acceptance.name, when })}>
          <h2 className="mt-3">{state.nextTitle}</h2>
          <ol className="mt-1 grid list-decimal gap-1 ps-5">
            {state.next({ deposit }).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ol>
          {jobNumber !== null && <p className="mt-2">{state.job(jobNumber)}</p>}
        </Notice>
      );
    }
    case "declined":
      return <Notice title={state.declined}>{state.declinedNext}</Notice>;
    case "lapsed":
      return <Notice title={state.lapsed(dayText(letter.validUntil))}>{state.lapsedNext}</Notice>;
    case "superseded":
      return <Notice title={state.superseded(letter.supersededBy)}>{state.supersededNext}</Notice>;
    default:
      return null;
  }
}
