import type { DemoWorkshop } from "../demo-workshop";
import type { LocalTime } from "../local-time";
import type { Member } from "./customer-pool";
import { type Want, wants } from "./wants";

/** One enquiry and how it went, before any row is made of it. */
export type Enquiry = {
  readonly want: Want;
  readonly member: Member;
  readonly goal: string;
  readonly askedAt: Date;
  /** When each version was issued. */
  readonly issuedAt: readonly [Date, ...Date[]];
  readonly discountPct: number;
  readonly outcome: "accepted" | "declined" | "lapsed";
  /** When the customer said yes or no; for a lapsed quote, its last issue. */
  readonly decidedAt: Date;
};

const DAY_MS = 86_400_000;
const HISTORY_DAYS = 548;
const LAST_ENQUIRY_DAYS = 12;
/** Some end too late to be history, and some find nobody left to ask. */
const EXTRA = 1.07;
const NEW_CUSTOMER = 0.4;

/** Every enquiry of the eighteen months, in order of time. */
export function enquiries(workshop: DemoWorkshop, pool: readonly Member[]): readonly Enquiry[] {
  const { random } = workshop;
  const asked = wants.flatMap((want) =>
    Array.from({ length: Math.round((want.jobs / want.winRate) * EXTRA) }, () => ({
      want,
      daysAgo: random.between(LAST_ENQUIRY_DAYS, HISTORY_DAYS),
      won: random.chance(want.winRate),
    })),
  );
  return asked
    .sort((one, other) => other.daysAgo - one.daysAgo)
    .flatMap(({ want, daysAgo, won }) => {
      const member = memberFor(workshop, pool, want);
      if (!member) return [];
      member.seen = true;
      if (won && want.once) member.had.add(want.once);
      return [enquiry(workshop, want, member, officeHour(workshop, daysAgo), won)];
    });
}

function memberFor({ random }: DemoWorkshop, pool: readonly Member[], want: Want): Member | undefined {
  const fitting = pool.filter(
    (member) => want.models.includes(member.model) && !(want.once && member.had.has(want.once)),
  );
  const fresh = fitting.filter((member) => !member.seen);
  const known = fitting.filter((member) => member.seen);
  const preferred = random.chance(NEW_CUSTOMER) ? [fresh, known] : [known, fresh];
  const from = preferred.find((list) => list.length > 0);
  return from ? random.pick(from) : undefined;
}

function enquiry(workshop: DemoWorkshop, want: Want, member: Member, askedAt: Date, won: boolean): Enquiry {
  const { random } = workshop;
  const isDear = want.once === "boost";
  const first = atTheDesk(workshop, askedAt, isDear ? random.integer(1, 3) : random.integer(0, 1));
  const issuedAt: [Date, ...Date[]] = random.chance(isDear ? 0.35 : 0.08)
    ? [first, atTheDesk(workshop, first, random.integer(2, 8))]
    : [first];
  const last = issuedAt.at(-1) ?? first;
  const saysNo = random.chance(0.45);
  const outcome = won ? "accepted" : saysNo ? "declined" : "lapsed";
  return {
    want,
    member,
    goal: random.pick(want.goals),
    askedAt,
    issuedAt,
    discountPct: random.pick(want.discounts),
    outcome,
    decidedAt: outcome === "lapsed" ? last : atHome(workshop, last, random.integer(1, isDear ? 12 : 5)),
  };
}

/** A moment when somebody is at the desk, that many days ago. */
function officeHour(workshop: DemoWorkshop, daysAgo: number): Date {
  const { local, anchor } = workshop;
  return onWeekday(workshop, local.dayOf(new Date(anchor.getTime() - daysAgo * DAY_MS)));
}

/** Some days later at the desk; on the same day, within the hour. */
function atTheDesk(workshop: DemoWorkshop, after: Date, days: number): Date {
  if (days === 0) return new Date(after.getTime() + workshop.random.integer(12, 55) * 60_000);
  return onWeekday(workshop, workshop.local.dayOf(after).add({ days }));
}

function onWeekday({ random, local }: DemoWorkshop, day: ReturnType<LocalTime["dayOf"]>): Date {
  const open = day.dayOfWeek > 5 ? day.add({ days: 8 - day.dayOfWeek }) : day;
  return local.at(open, clock(random.integer(8, 15), random.integer(0, 59)));
}

/** Some days later, when customers sit down to decide. */
function atHome({ random, local }: DemoWorkshop, after: Date, days: number): Date {
  return local.at(local.dayOf(after).add({ days }), clock(random.integer(7, 21), random.integer(0, 59)));
}

const clock = (hour: number, minute: number) =>
  `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
