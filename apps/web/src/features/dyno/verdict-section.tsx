import { ButtonLink } from "@/design/button";
import { figureText } from "@/design/figure-text";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Moment } from "@/design/moment";
import { Section } from "@/design/sheet";
import { releaseVerdictAction } from "./actions";
import { comparisonSentences } from "./comparison-sentences";
import type { JobDyno } from "./shown-dyno";

/** What was promised, what was measured, and whether the one keeps the other: in one sentence, signed by name. */
export function VerdictSection({ page }: { readonly page: JobDyno }) {
  const { promise, comparison, verdict, weighed, proof } = page;
  return (
    <Section
      title="Verdict"
      id="verdict"
      aside={promise && <span className="fine">{promiseText(promise)}</span>}
    >
      {!promise && <p>The accepted version promises no power, so there is no verdict to release.</p>}
      {promise && !proof && <p>No proof is measured yet. Three runs that agree decide it.</p>}
      {weighed && (
        <p className="dyno-verdict" data-outcome={weighed.outcome}>
          {verdict?.isCurrent ? verdict.sentence : weighed.sentence}
        </p>
      )}
      {comparison && (
        <ul className="dyno-remarks">
          {comparisonSentences(comparison).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      {promise && weighed?.outcome === "missed" && promise.remedy !== "" && (
        <p>
          <strong>What was agreed for this case:</strong> {promise.remedy}
        </p>
      )}
      <Release page={page} />
    </Section>
  );
}

function promiseText({ lowKw, highKw, at, referenceCondition }: NonNullable<JobDyno["promise"]>): string {
  const condition = referenceCondition === "" ? "" : `; ${referenceCondition}`;
  return `promised ${figureText(lowKw)} to ${figureText(highKw)} kW at the ${at}${condition}`;
}

function Release({ page }: { readonly page: JobDyno }) {
  const { verdict, weighed, job, timeZone, mayMeasure, baseline } = page;
  return (
    <>
      {verdict && (
        <p className="fine">
          {verdict.isCurrent
            ? "Released"
            : `An earlier verdict, on runs before these: ${verdict.sentence} Released`}{" "}
          by {verdict.by}, <Moment at={verdict.at} timeZone={timeZone} />.
        </p>
      )}
      {weighed && !verdict?.isCurrent && !baseline && (
        <p>Import the baseline too: a verdict is released on both.</p>
      )}
      {weighed && !verdict?.isCurrent && !mayMeasure && (
        <p className="no-print">Not released yet. A dyno operator releases it here.</p>
      )}
      {weighed && !verdict?.isCurrent && mayMeasure && baseline && (
        <ActionForm action={releaseVerdictAction} label="Release the verdict">
          <input type="hidden" name="jobId" value={job.id} readOnly />
          <input type="hidden" name="seen" value={weighed.sentence} readOnly />
          <div className="form-actions">
            <SubmitButton pendingLabel="Releasing">Release this verdict</SubmitButton>
            <span className="fine">Your name goes under it, and its runs stay as they are.</span>
          </div>
        </ActionForm>
      )}
      {verdict && (
        <p className="no-print">
          <ButtonLink href={`/dyno/jobs/${job.id}/certificate`} prefetch={false}>
            Certificate as PDF
          </ButtonLink>
        </p>
      )}
    </>
  );
}
