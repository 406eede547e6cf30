import { myDay } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { Density } from "@/design/density";
import { EmptyState } from "@/design/empty-state";
import { momentText } from "@/design/moment-text";
import { Page, Section, SheetHead } from "@/design/sheet";
import { ClockEntryList } from "@/features/floor/clock-entry-list";
import { DayClock } from "@/features/floor/day-clock";
import { FloorJobList } from "@/features/floor/floor-job-list";
import "@/features/floor/floor.css";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Floor" };

interface FloorPageProps {
  readonly searchParams: Promise<{ person?: string }>;
}

/** My work today: where each vehicle stands and what is next. */
export default async function FloorPage({ searchParams }: FloorPageProps) {
  const { person } = await searchParams;
  const loaded = await load(myDay, person ? { personId: person } : {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const day = loaded.value;
  const { timeZone, clock } = day;
  return (
    <Density of="floor">
      <Page>
        <SheetHead
          title={day.isOwn ? "Your day" : `${day.person.name}'s day`}
          lead={momentText(day.now, timeZone, "day")}
        />
        {day.people.length > 0 && (
          <nav className="floor-people" aria-label="Whose day">
            {day.people.map(({ id, name }) => (
              <Link
                key={id}
                href={`/floor?person=${id}`}
                aria-current={id === day.person.id ? "page" : undefined}
              >
                {name}
              </Link>
            ))}
          </nav>
        )}
        {day.isOwn && (
          <DayClock
            personId={day.person.id}
            timeZone={timeZone}
            readAt={day.now.toISOString()}
            clock={
              clock && {
                jobId: clock.jobId,
                number: clock.number,
                since: momentText(clock.startedAt, timeZone),
                operation: clock.operationName,
              }
            }
          />
        )}
        <Section title={day.isOwn ? "Booked for you today" : "Booked today"}>
          <FloorJobList
            label="Booked today"
            jobs={day.booked}
            personId={day.person.id}
            timeZone={timeZone}
            empty={
              <EmptyState sentence="Nothing is booked for today. Look at what else is in the building, or ask the manager." />
            }
          />
        </Section>
        <Section title="Also in the building">
          <FloorJobList
            label="Also in the building"
            jobs={day.others}
            personId={day.person.id}
            timeZone={timeZone}
            empty={<EmptyState sentence="No other vehicle is in work." />}
          />
        </Section>
        <Section title={day.isOwn ? "Your clock, today and yesterday" : "Clock, today and yesterday"}>
          <ClockEntryList
            entries={day.clocked}
            timeZone={timeZone}
            by="job"
            empty="Nothing is clocked today or yesterday."
          />
        </Section>
      </Page>
    </Density>
  );
}
