import { jobStatusWords, listBuilds } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { RuledTable } from "@/design/ruled-table";
import { Page, SheetHead } from "@/design/sheet";
import { dateText } from "@/features/builds/build-words";
import { SearchForm } from "@/features/customers/search-form";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Builds" };

const columns = [
  { id: "build", title: "Build" },
  { id: "vehicle", title: "Vehicle" },
  { id: "customer", title: "Customer" },
  { id: "goal", title: "Goal" },
  { id: "wanted", title: "Wanted by" },
  { id: "stands", title: "Where it stands" },
] as const;

export default async function BuildsPage(props: { readonly searchParams: Promise<{ q?: string }> }) {
  const search = ((await props.searchParams).q ?? "").slice(0, 100);
  const loaded = await load(listBuilds, { search });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { builds, hasMore } = loaded.value;
  return (
    <Page>
      <SheetHead
        title="Builds"
        lead="The one changed last stands first. A build begins on its vehicle’s page."
      />
      <SearchForm label="Search builds" search={search} placeholder="Owner, plate, goal, number or part" />
      <RuledTable
        caption="Builds"
        isCaptionHidden
        columns={columns}
        rows={builds.map((build) => ({
          id: build.id,
          cells: {
            build: (
              <Link href={`/builds/${build.id}`} className="whitespace-nowrap">
                Build {build.number}
              </Link>
            ),
            vehicle: [build.vehicle.plate, build.vehicle.model].filter((part) => part !== "").join(" · "),
            customer: build.customer.name,
            goal: build.goal,
            wanted: build.wantedBy ? dateText(build.wantedBy) : "",
            stands: <Stands build={build} />,
          },
        }))}
        empty={
          <EmptyState
            sentence={
              search === ""
                ? "There are no builds yet. Find the vehicle and start one on its page."
                : `No build is found for “${search}”. Try the plate or the owner.`
            }
            action={<ButtonLink href="/customers">Go to the customers</ButtonLink>}
          />
        }
      />
      {hasMore && <p className="fine">These are the first 100. Search to find the others.</p>}
    </Page>
  );
}

interface StandsProps {
  readonly build: {
    readonly quote: { readonly id: string; readonly number: number } | null;
    readonly job: {
      readonly id: string;
      readonly number: number;
      readonly status: keyof typeof jobStatusWords;
    } | null;
  };
}

function Stands({ build: { quote, job } }: StandsProps) {
  if (job) {
    return (
      <>
        <Link href={`/jobs/${job.id}`}>Job {job.number}</Link>, {jobStatusWords[job.status]}
      </>
    );
  }
  return quote ? <Link href={`/quotes/${quote.id}`}>Quote {quote.number}</Link> : <>not quoted yet</>;
}
