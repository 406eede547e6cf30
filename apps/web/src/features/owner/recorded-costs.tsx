import { recordedKinds } from "@buildproof/workshop";
import { Section, Stack } from "@/design/sheet";
import { kindPaths, kindWords } from "./kind-words";
import { RecordedTable } from "./recorded-table";
import type { ShownJob } from "./shown-margins";

/** What a job cost beside the clock, kind by kind, so that each step of the waterfall has its place to lead to. */
export function RecordedCosts({ job }: { readonly job: ShownJob }) {
  return (
    <Stack>
      {recordedKinds.map((kind) => {
        const costs = job.costs.filter((cost) => cost.kind === kind);
        return (
          <Section key={kind} id={kindPaths[kind]} title={`${kindWords[kind]}: recorded`}>
            {costs.length > 0 ? (
              <RecordedTable costs={costs} currency={job.currency} timeZone={job.timeZone} />
            ) : (
              <p className="fine">{nothingOf(job, kind)}</p>
            )}
          </Section>
        );
      })}
    </Stack>
  );
}

function nothingOf(job: ShownJob, kind: (typeof recordedKinds)[number]): string {
  if (kind === "dyno" && job.clock.some((entry) => entry.kind === "dyno")) {
    return "Nothing recorded: dyno hours came from the clock, above.";
  }
  return job.nothingYet.includes(kind)
    ? "Nothing recorded yet, though the quote expects it."
    : "Nothing recorded, and nothing quoted.";
}
