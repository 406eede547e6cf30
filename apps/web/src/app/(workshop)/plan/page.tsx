import { readPlan } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { Page, SheetHead } from "@/design/sheet";
import { dayText } from "@/features/plan/local-text";
import { PlanBoard } from "@/features/plan/plan-board";
import { timeAxis } from "@/features/plan/time-axis";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Plan" };

interface PlanPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export default async function PlanPage({ searchParams }: PlanPageProps) {
  const { day, span, job } = await searchParams;
  const wanted = span === "week" ? ("week" as const) : ("day" as const);
  const isDay = typeof day === "string" && /^\d{4}-\d{2}-\d{2}$/.test(day);
  const loaded = await load(readPlan, { span: wanted, ...(isDay ? { day } : {}) });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const plan = loaded.value;
  const bookings = plan.resources.flatMap((resource) => resource.bookings);
  const step = wanted === "week" ? 7 : 1;
  const title = wanted === "week" ? `Plan, week of ${dayText(plan.day)}` : `Plan, ${dayText(plan.day)}`;
  return (
    <Page>
      <SheetHead
        title={title}
        lead={`Times are on the workshop's clock (${plan.timeZone}).`}
        actions={
          <>
            <ButtonLink href={planHref(shift(plan.day, -step), wanted)}>
              {wanted === "week" ? "Week before" : "Day before"}
            </ButtonLink>
            <ButtonLink href={planHref(plan.today, wanted)}>Today</ButtonLink>
            <ButtonLink href={planHref(shift(plan.day, step), wanted)}>
              {wanted === "week" ? "Week after" : "Day after"}
            </ButtonLink>
            <ButtonLink href={planHref(plan.day, wanted === "week" ? "day" : "week")}>
              {wanted === "week" ? "Show one day" : "Show the week"}
            </ButtonLink>
          </>
        }
      />
      <PlanBoard
        key={`${plan.day} ${wanted} ${typeof job === "string" ? job : ""}`}
        axis={timeAxis(plan.days, bookings)}
        rows={plan.resources.map(({ id, name, kind, maxMassKg, skills, bookings: blocks }) => ({
          id,
          name,
          note: noteOf(kind, maxMassKg, skills),
          bookings: blocks,
        }))}
        now={plan.now}
        timeZone={plan.timeZone}
        day={plan.day.localeCompare(plan.today) < 0 ? plan.today : plan.day}
        jobs={plan.waiting.map(({ id, number, plate, customer, model, points, work }) => ({
          id,
          label: `Job ${number} · ${plate} · ${customer} · ${model}`,
          points,
          work,
        }))}
        chosenJobId={typeof job === "string" ? job : null}
        resources={plan.choices}
        mayBook={plan.mayBook}
        waitingElsewhere={plan.waitingTotal - plan.waiting.length}
      />
    </Page>
  );
}

function planHref(day: string, span: "day" | "week"): string {
  return `/plan?day=${day}&span=${span}`;
}

/** Some days on from a calendar date, which has no zone. */
function shift(day: string, days: number): string {
  const date = new Date(`${day}T00:00:00Z`);
  date.setUTCDate(date.getUTCDate() + days);
  return date.toISOString().slice(0, 10);
}

function noteOf(kind: string, maxMassKg: number | null, skills: readonly string[]): string {
  if (kind === "person") return skills.map((skill) => skill.replaceAll("-", " ")).join(", ");
  return maxMassKg === null ? "" : `rated ${maxMassKg.toLocaleString("en-AU")} kg`;
}
