"use client";

import type { ProofLine, ProofReport } from "@buildproof/workshop";
import { Disclosure } from "@/design/disclosure";
import { Loading } from "@/design/loading";
import { Notice } from "@/design/notice";
import { SentenceList } from "@/design/sentence-list";
import { BuildCounts } from "./build-counts";
import { LimitTable } from "./limit-table";
import { OpenLimits } from "./open-limits";
import { useProof } from "./use-proof";

interface ProofSectionProps {
  /** A draft, or null for the catalogue that is sold from. */
  readonly versionId: string | null;
  /** Changes with the draft, so that its proof is asked for anew. */
  readonly stamp?: string;
}

/** What is proven of the catalogue over all builds and vehicles. It arrives after the page. */
export function ProofSection({ versionId, stamp = "" }: ProofSectionProps) {
  const answer = useProof(versionId, stamp);
  return (
    <section className="stack" aria-label="Proof of the catalogue" aria-busy={answer.state === "asking"}>
      <p aria-live="polite">
        {answer.state === "asking" && "Proving every build on every vehicle; this takes some seconds …"}
        {answer.state === "told" && summaryOf(answer.report)}
      </p>
      {answer.state === "asking" && <Loading label="Proving the catalogue" />}
      {answer.state === "failed" && (
        <Notice kind="blocks" title="Nothing is proven.">
          <p>{answer.sentence}</p>
        </Notice>
      )}
      {answer.state === "told" && <Report report={answer.report} isDraft={versionId !== null} />}
    </section>
  );
}

function summaryOf({ findings, vehicles }: ProofReport): string {
  const wrong = findings.filter(({ standing }) => standing === "wrong").length;
  const limits = vehicles.flatMap((each) => each.limits);
  const count = (...verdicts: readonly string[]) =>
    limits.filter(({ verdict }) => verdicts.includes(verdict)).length;
  const open = count("unsettled") + findings.filter(({ standing }) => standing === "open").length;
  const sentences = [
    wrong === 0 ? "Nothing is to be put right." : `${things(wrong)} to be put right.`,
    `Of ${limits.length} limits, ${count("kept-by-others", "kept-by-itself")} hold for every build that can be sold.`,
  ];
  const [setAside, exceeded] = [count("set-aside"), count("exceeded")];
  if (setAside > 0) sentences.push(`${setAside} can be exceeded when a rule is set aside.`);
  if (exceeded > 0) sentences.push(`${exceeded} ${exceeded === 1 ? "is" : "are"} kept by no rule.`);
  sentences.push(open === 0 ? "All of it is proven." : `${things(open)} not settled in time.`);
  return sentences.join(" ");
}

function things(count: number): string {
  return count === 1 ? "1 thing is" : `${count} things are`;
}

interface ReportProps {
  readonly report: ProofReport;
  readonly isDraft: boolean;
}

function Report({ report, isDraft }: ReportProps) {
  const { findings, vehicles } = report;
  const of = (standing: ProofLine["standing"]) => findings.filter((each) => each.standing === standing);
  const all = vehicles.length;
  return (
    <>
      <Lines title="To be put right" lines={of("wrong")} all={all} weight="blocks" isOpen />
      <h3>Limits</h3>
      <LimitTable vehicles={vehicles} />
      <OpenLimits vehicles={vehicles} isDraft={isDraft} />
      <h3>Builds that keep every rule</h3>
      <BuildCounts vehicles={vehicles} />
      <Lines title="Rules that say nothing" lines={of("idle")} all={all} />
      <Lines title="What choices bring along" lines={of("known")} all={all} />
      <Lines title="Not settled in time" lines={of("open")} all={all} />
      <p className="fine">
        Proven for every odometer, fuel and trailer that a vehicle can be entered with, passed inspection or
        not, at this site’s hot day, and whatever torque the engine would make; quantities count as one.
      </p>
    </>
  );
}

interface LinesProps {
  readonly title: string;
  readonly lines: readonly ProofLine[];
  readonly all: number;
  readonly weight?: "ordinary" | "blocks";
  readonly isOpen?: boolean;
}

function Lines({ title, lines, all, weight = "ordinary", isOpen = false }: LinesProps) {
  if (lines.length === 0) return null;
  return (
    <Disclosure title={`${title} (${lines.length})`} defaultExpanded={isOpen}>
      <SentenceList
        label={title}
        sentences={lines.map(({ sentence, vehicles }) => ({
          id: sentence,
          sentence,
          weight,
          note: vehicles.length === all ? "On every vehicle." : `On ${vehicles.join(", ")}.`,
        }))}
      />
    </Disclosure>
  );
}
