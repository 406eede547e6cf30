import { type JobView, jobViews, listJobs } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/design/empty-state";
import { Moment } from "@/design/moment";
import { RuledTable } from "@/design/ruled-table";
import { Page, SheetHead } from "@/design/sheet";
import { JobsFilter, viewWords } from "@/features/jobs/jobs-filter";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Jobs" };

interface JobsPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export default async function JobsPage({ searchParams }: JobsPageProps) {
  const given = await searchParams;
  const view = viewOf(given.view);
  const search = typeof given.search === "string" ? given.search.slice(0, 100) : "";
  const page = Math.max(1, Math.trunc(Number(given.page)) || 1);
  const loaded = await load(listJobs, { view, search, page });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { jobs, total, pages, timeZone } = loaded.value;
  return (
    <Page>
      <SheetHead title="Jobs" lead={`${total} ${viewWords[view]}${search ? `, found by “${search}”` : ""}`} />
      <JobsFilter view={view} search={search} />
      <RuledTable
        caption={`Jobs: ${viewWords[view]}`}
        isCaptionHidden
        columns={[
          { id: "number", title: "Job" },
          { id: "vehicle", title: "Vehicle" },
          { id: "customer", title: "Customer" },
          { id: "status", title: "Status" },
          { id: "next", title: "First booked time" },
        ]}
        rows={jobs.map((job) => ({
          id: job.id,
          cells: {
            number: <Link href={`/jobs/${job.id}`}>{`Job ${job.number}`}</Link>,
            vehicle: (
              <>
                {job.plate}
                <span className="sentence-note">{job.model}</span>
              </>
            ),
            customer: (
              <>
                {job.customer}
                <span className="sentence-note">{job.goal}</span>
              </>
            ),
            status: (
              <>
                {job.statusWords}
                {job.stoppedBecause && <span className="sentence-note">{job.stoppedBecause}</span>}
                {job.openFaults > 0 && (
                  <span className="sentence-note">{`${job.openFaults} open ${job.openFaults === 1 ? "fault" : "faults"}`}</span>
                )}
              </>
            ),
            next: job.next ? (
              <>
                <Moment at={job.next.startsAt} timeZone={timeZone} />
                <span className="sentence-note">{`${job.next.resource}, ${job.next.work}`}</span>
              </>
            ) : (
              "none"
            ),
          },
        }))}
        empty={
          <EmptyState
            sentence={
              search
                ? "No job is found by that. Try a plate, a name or a job number, or look in all jobs."
                : "No job is here. A job opens when a customer accepts a quote."
            }
          />
        }
      />
      {pages > 1 && (
        <nav aria-label="Pages" className="form-actions">
          {page > 1 && <Link href={pageHref(view, search, page - 1)}>Newer</Link>}
          <span>{`page ${page} of ${pages}`}</span>
          {page < pages && <Link href={pageHref(view, search, page + 1)}>Older</Link>}
        </nav>
      )}
    </Page>
  );
}

function viewOf(given: string | string[] | undefined): JobView {
  const names = Object.keys(jobViews);
  return typeof given === "string" && names.includes(given) ? (given as JobView) : "current"; // Just found among them.
}

function pageHref(view: JobView, search: string, page: number): string {
  return `/jobs?${new URLSearchParams({ view, search, page: String(page) })}`;
}
