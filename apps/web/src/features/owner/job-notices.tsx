import { moneyText } from "@/design/money-text";
import { Notice } from "@/design/notice";
import { kindWords } from "./kind-words";
import type { ShownJob } from "./shown-margins";

/** What a reader has to know before trusting the figures of a job. */
export function JobNotices({ job }: { readonly job: ShownJob }) {
  const { ending, nothingYet, earnings, currency, receivedMinor } = job;
  if (ending === "stopped") {
    return (
      <Notice title="This job was stopped: what was quoted was never charged.">
        <p>
          {`Received less what went back: ${moneyText(receivedMinor, currency)}, with tax. It cost ${moneyText(earnings.actualCostMinor, currency)}. The margin below is of the quote, and stands in no package’s figures.`}
        </p>
      </Notice>
    );
  }
  const missing = nothingYet.map(
    (kind) =>
      `${kindWords[kind]}: quoted at ${moneyText(earnings.quotedMinor[kind], currency)}, nothing against it`,
  );
  if (missing.length === 0 && ending !== "going-on") return null;
  return (
    <Notice
      title={
        ending === "going-on"
          ? "Work is going on: the costs so far are not the last."
          : "Something that was quoted has no cost yet, so the margin looks better than it is."
      }
    >
      {missing.length > 0 && (
        <ul>
          {missing.map((sentence) => (
            <li key={sentence}>{sentence}.</li>
          ))}
        </ul>
      )}
    </Notice>
  );
}
