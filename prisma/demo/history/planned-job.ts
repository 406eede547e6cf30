import type { DemoWorkshop } from "../demo-workshop";
import { type PricedSelection, priceSelection } from "../price-selection";
import type { Enquiry } from "./enquiry";
import { type JobTimes, learning, planJob, planRetorque } from "./job-times";
import { slotBook } from "./slot-book";
import { type WorkingTime, whole } from "./working-time";

/** A won enquiry with its work laid out in time, and how it ended. */
export type PlannedJob = {
  readonly times: JobTimes;
  readonly priced: PricedSelection;
  readonly failsInspection: boolean;
  /** Real hours over quoted hours. */
  readonly slower: number;
  readonly finishedAt: Date;
  readonly handedOverAt: Date;
};

const DAY_MS = 86_400_000;
/** About three in a hundred do not pass; one in so many of each kind here. */
const FAILS_EVERY = 30;
const FAILS_FIRST = 14;
/** Seized fasteners, by age and coast: 5 to 15 % on some jobs (common practice, no source). */
const SEIZED_SHARE = 0.4;

/** Plans the won enquiries in order of acceptance; what would end too late for history is left out. */
export function planJobs(
  workshop: DemoWorkshop,
  time: WorkingTime,
  won: readonly Enquiry[],
  lastHandOver: Date,
): ReadonlyMap<Enquiry, PlannedJob> {
  const { random, site } = workshop;
  const book = slotBook(time.minutes);
  const done = new Map<string, number>();
  const planned = new Map<Enquiry, PlannedJob>();
  for (const enquiry of won) {
    const { want } = enquiry;
    const n = (done.get(want.code) ?? want.doneBefore) + 1;
    done.set(want.code, n);
    const priced = priceSelection(site, want.items, enquiry.discountPct);
    const isBoosted = want.once === "boost";
    const seized = random.chance(SEIZED_SHARE) ? random.between(0.05, 0.15) : 0;
    const slower = learning(n) * random.normal(1.01, 0.06) + seized;
    const failsInspection = isBoosted && n % FAILS_EVERY === FAILS_FIRST;
    const leadDays = Math.max(...priced.items.map((item) => item.leadDays));
    const times = planJob(book, random, {
      priced,
      isBoosted,
      earliestInspection: time.minuteAt(new Date(enquiry.decidedAt.getTime() + 1.2 * DAY_MS)),
      partsDays: Math.ceil((leadDays * 5) / 7) + random.integer(0, 4),
      slower,
      failsInspection,
    });
    const last = times?.visits.at(-1);
    if (!times || !last) continue;
    const finishedAt = whole(time.stretches(last.slot.from, last.slot.to)).to;
    const handedOverAt = handOverOf(workshop, priced, finishedAt);
    if (handedOverAt > lastHandOver) continue;
    const weeksLater = time.minuteAt(new Date(handedOverAt.getTime() + random.integer(18, 30) * DAY_MS));
    const after = failsInspection ? null : planRetorque(book, random, priced, weeksLater);
    const visits = after ? [...times.visits, after] : times.visits;
    planned.set(enquiry, {
      times: { ...times, visits },
      priced,
      failsInspection,
      slower,
      finishedAt,
      handedOverAt,
    });
  }
  return planned;
}

/** The keys go back in the afternoon of a weekday, once the signatory's certificate is here. */
function handOverOf({ random, local }: DemoWorkshop, priced: PricedSelection, finishedAt: Date): Date {
  const isCertified = priced.items.some(({ id }) => id === "engineer-certificate");
  const waits = isCertified ? random.integer(3, 12) : random.integer(0, 2);
  const day = local.dayOf(finishedAt).add({ days: waits });
  const open = day.dayOfWeek > 5 ? day.add({ days: 8 - day.dayOfWeek }) : day;
  return local.at(open, `16:${String(random.integer(10, 55))}`);
}
