import { type Owed, showToday, type Visit } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { ButtonLink } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { SentenceList } from "@/design/sentence-list";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { dayInWords } from "@/features/today/day-in-words";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Today" };

export default async function TodayPage() {
  const loaded = await load(showToday, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { today, owed, arrivals, collections, worksOnTheFloorOnly } = loaded.value;
  if (worksOnTheFloorOnly) redirect("/floor");
  return (
    <Page>
      <SheetHead
        title="Today"
        lead={dayInWords(today)}
        actions={
          <>
            <ButtonLink href="/customers/new">New customer</ButtonLink>
            <ButtonLink href="/vehicles/new">New vehicle</ButtonLink>
          </>
        }
      />
      <Columns>
        <Section title="What we owe people" aside={<span className="fine">the most urgent first</span>}>
          <SentenceList
            label="What we owe people"
            sentences={owed.map((each) => owedSentence(each))}
            empty={
              <EmptyState sentence="Nothing is owed to anybody. Quotes that run out, deposits and faults appear here." />
            }
          />
        </Section>
        <Stack>
          <Visits title="Arriving today" visits={arrivals} empty="Nobody brings a vehicle today." />
          <Visits title="Collected today" visits={collections} empty="Nobody collects a vehicle today." />
        </Stack>
      </Columns>
    </Page>
  );
}

function owedSentence({ kind, sentence, action }: Owed) {
  return {
    id: `${kind}-${action.place}-${action.id}-${sentence}`,
    sentence,
    weight: kind === "fault" || kind === "hand-over-blocked" ? ("blocks" as const) : ("ordinary" as const),
    action: <ButtonLink href={hrefOf(action)}>{action.label}</ButtonLink>,
  };
}

function hrefOf({ place, id }: Owed["action"]): string {
  if (place === "quote") return `/quotes/${id}`;
  if (place === "catalogue") return `/catalogue/versions/${id}`;
  return place === "hand-over" ? `/jobs/${id}/hand-over` : `/jobs/${id}`;
}

interface VisitsProps {
  readonly title: string;
  readonly visits: readonly Visit[];
  readonly empty: string;
}

function Visits({ title, visits, empty }: VisitsProps) {
  return (
    <Section title={title}>
      <SentenceList
        label={title}
        sentences={visits.map((visit) => ({
          id: visit.jobId,
          sentence: (
            <>
              <span className="figure">{visit.at}</span>{" "}
              <Link href={`/jobs/${visit.jobId}`}>
                {visit.plate || visit.model}, job {visit.number}
              </Link>
            </>
          ),
          note: [visit.owner, visit.plate === "" ? "" : visit.model, visit.phone]
            .filter((part) => part !== "")
            .join(" · "),
        }))}
        empty={<p className="fine">{empty}</p>}
      />
    </Section>
  );
}
