import type { ReactNode } from "react";
import { ButtonLink } from "@/design/button";
import { Section } from "@/design/sheet";
import { dayText } from "./day-text";
import type { ShownQuote } from "./shown-quote";
import { DiscardDraftForm, IssueForm, MakeVersionForm, TakeBuildAgainForm } from "./version-forms";

/** What moves this quote on, and what holds it up. */
export function NextStep({ quote }: { readonly quote: ShownQuote }) {
  return (
    <Section title="Next">
      <Step quote={quote} />
    </Section>
  );
}

function Step({ quote }: { readonly quote: ShownQuote }): ReactNode {
  const { shown, versions, may } = quote;
  const draft = versions.find(({ status }) => status === "draft");
  if (shown.status === "draft") return <DraftStep quote={quote} />;
  if (draft)
    return (
      <p>
        Version {draft.versionNo} is in draft.{" "}
        <a href={`/quotes/${quote.id}?version=${draft.versionNo}`}>Go to the draft</a>
      </p>
    );
  const next = Math.max(...versions.map(({ versionNo }) => versionNo)) + 1;
  return (
    <div className="grid gap-3">
      <p>{sentenceOf(quote)}</p>
      {quote.job && (
        <p>
          <ButtonLink href={`/jobs/${quote.job.id}`}>Job {quote.job.number}</ButtonLink>
        </p>
      )}
      {may.write && <MakeVersionForm versionId={shown.id} next={next} />}
    </div>
  );
}

function DraftStep({ quote }: { readonly quote: ShownQuote }) {
  const { shown, may, versions } = quote;
  const { id: versionId, revision, versionNo, open } = shown;
  const seen = { versionId, revision };
  return (
    <div className="grid gap-4">
      {may.issue && <IssueForm {...seen} versionNo={versionNo} points={open?.points ?? []} />}
      {open?.isBuildChanged && may.write && <TakeBuildAgainForm {...seen} />}
      {may.write && versions.length > 1 && <DiscardDraftForm {...seen} versionNo={versionNo} />}
    </div>
  );
}

/** Where the deposit no longer decides what is next; null while it does. */
function jobSentence(job: ShownQuote["job"]): string | null {
  if (!job || job.status === "waiting" || job.status === "booked") return null;
  return job.status === "stopped" ? "Accepted, and its job is stopped." : "Accepted, and its job has begun.";
}

function sentenceOf({ shown, versions, money, job }: ShownQuote): string {
  const version = versions.find(({ id }) => id === shown.id);
  switch (shown.status) {
    case "issued":
      return `The customer can accept it until the end of ${dayText(shown.validUntil)}. Send the link below.`;
    case "accepted":
      return jobSentence(job) ?? depositSentence(money);
    case "declined":
      return version?.decline?.reason
        ? `The customer declined: “${version.decline.reason}”`
        : "The customer declined and gave no reason.";
    case "lapsed":
      return "Nobody accepted it in time. Make a new version at today's prices.";
    case "superseded":
      return shown.supersededBy
        ? `Version ${shown.supersededBy} took its place.`
        : "A newer version took its place.";
    case "draft":
      return "";
  }
}

function depositSentence(money: ShownQuote["money"]): string {
  return money?.depositMet
    ? "Accepted, and the deposit is here. The job waits for its booking."
    : "Accepted. The deposit is still to come; parts are ordered when it is here.";
}
