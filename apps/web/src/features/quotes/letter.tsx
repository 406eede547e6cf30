import type { ReactNode } from "react";
import { ButtonLink } from "@/design/button";
import { Density } from "@/design/density";
import { momentText } from "@/design/moment-text";
import { Money } from "@/design/money";
import { moneyText } from "@/design/money-text";
import { en } from "@/messages/en";
import { dayText } from "./day-text";
import { LetterAnswer } from "./letter-answer";
import { LetterCost } from "./letter-cost";
import { QuestionForm } from "./letter-forms";
import { MessageThread } from "./message-thread";
import { PrintButton } from "./print-button";
import type { ShownLetter } from "./shown-letter";

interface LetterProps {
  readonly letter: ShownLetter;
  readonly token: string;
}

/** The quote as a letter to its customer: plain words in the order of the questions a person has. */
export function Letter({ letter, token }: LetterProps) {
  const texts = en.letter;
  return (
    <Density of="floor">
      <main id="content">
        <article className="page page-narrow">
          <LetterHead letter={letter} />
          <LetterAnswer letter={letter} token={token} place="above" />
          {letter.goal && (
            <Part title={texts.asked}>
              <p>{letter.goal}</p>
            </Part>
          )}
          <Part title={texts.proposed}>
            <p>{letter.proposed}</p>
          </Part>
          {letter.note && (
            <Part title={texts.note}>
              <p className="whitespace-pre-line">{letter.note}</p>
            </Part>
          )}
          <Outcome letter={letter} />
          <Part title={texts.cost}>
            <LetterCost letter={letter} />
          </Part>
          <Part title={texts.when}>
            <p>{letter.partsBy}</p>
          </Part>
          <Part title={texts.need}>
            <p>
              {texts.deposit(moneyText(letter.deposit.dueMinor, letter.currency))} {letter.deposit.covers}
            </p>
          </Part>
          <ListPart title={texts.included} sentences={letter.inclusions} />
          <ListPart title={texts.rests} sentences={letter.assumptions} />
          <ListPart title={texts.excluded} sentences={letter.exclusions} />
          <ListPart title={texts.careful} sentences={letter.cautions} isCaution />
          <LetterAnswer letter={letter} token={token} place="below" />
          <Questions letter={letter} token={token} />
          <footer className="grid gap-3 border-t border-ink pt-4">
            <p>{en.ask(letter.workshop)}</p>
            <div className="no-print flex flex-wrap gap-3">
              <ButtonLink href={`/q/${token}/pdf`} prefetch={false} target="_blank">
                {texts.paper}
              </ButtonLink>
              <PrintButton />
            </div>
          </footer>
        </article>
      </main>
    </Density>
  );
}

function Questions({ letter, token }: LetterProps) {
  const texts = en.questions;
  return (
    <Part title={texts.title}>
      {letter.messages.length > 0 ? (
        <MessageThread messages={letter.messages} customer={texts.you} timeZone={letter.workshop.timeZone} />
      ) : (
        <p>{texts.lead}</p>
      )}
      <div className="no-print">
        <QuestionForm token={token} />
      </div>
    </Part>
  );
}

function LetterHead({ letter }: { readonly letter: ShownLetter }) {
  const { workshop, vehicle, number, versionNo } = letter;
  const texts = en.letter;
  return (
    <header className="grid gap-4">
      <div className="border-t-4 border-ink pt-3">
        <p className="font-bold">{workshop.name}</p>
        <p className="fine">
          {workshop.address}
          <br />
          {workshop.phone}, {workshop.email}
        </p>
      </div>
      <h1>{texts.title({ number, version: versionNo })}</h1>
      <dl className="grid grid-cols-[auto_1fr] gap-x-4 gap-y-1">
        <Fact label={texts.reader}>{letter.customer.name}</Fact>
        <Fact label={texts.vehicle}>
          {vehicle.description}, {texts.plate(vehicle.plate)}
        </Fact>
        {letter.issuedAt && (
          <Fact label={texts.dated}>{momentText(letter.issuedAt, workshop.timeZone, "day")}</Fact>
        )}
        {letter.status === "issued" && <Fact label={texts.openUntil}>{dayText(letter.validUntil)}</Fact>}
        <Fact label={texts.total(workshop.taxName)}>
          <Money minor={letter.totals.grossMinor} currency={letter.currency} />
        </Fact>
      </dl>
    </header>
  );
}

function Outcome({ letter }: { readonly letter: ShownLetter }) {
  const { promise } = letter;
  if (!promise) return null;
  const texts = en.letter;
  const kw = (value: number) => String(Math.round(value));
  return (
    <Part title={texts.outcome}>
      <p className="text-xl font-bold">{texts.band({ low: kw(promise.lowKw), high: kw(promise.highKw) })}</p>
      <p>{texts.bandMeaning}</p>
      <p>{texts.conditions(promise.referenceCondition)}</p>
      <p>{promise.remedy}</p>
    </Part>
  );
}

function Fact({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <>
      <dt className="text-ink-soft">{label}</dt>
      <dd className="font-semibold">{children}</dd>
    </>
  );
}

function Part({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="grid gap-2">
      <h2>{title}</h2>
      {children}
    </section>
  );
}

interface ListPartProps {
  readonly title: string;
  readonly sentences: readonly string[];
  readonly isCaution?: boolean;
}

function ListPart({ title, sentences, isCaution = false }: ListPartProps) {
  if (sentences.length === 0) return null;
  return (
    <section
      className={isCaution ? "notice grid gap-2" : "grid gap-2"}
      data-kind={isCaution ? "caution" : undefined}
    >
      <h2>{title}</h2>
      <ul className="grid list-disc gap-1 ps-5">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}
