import { standardFigures } from "../dyno-curve";
import { addDynoSession, type DemoSession } from "../dyno-rows";
import { addJob, type DemoJob } from "../job-rows";
import type { DemoBuild, WantedVersion } from "../quote-rows";
import {
  addCheckIn,
  addClock,
  addCost,
  addGoodsIn,
  addInspection,
  addStepEntries,
  type Stretch,
} from "../work-rows";
import { type AcceptedDates, addAcceptedQuote, addEnquiry, type Enquiry, type LiveDay } from "./live-day";

/** A job whose vehicle has come in, told from the first call on. */
export type LiveJob = {
  readonly enquiry: Enquiry;
  /** Before the quote, where the build asks for it: the inspection, then the baseline. */
  readonly inspected?: { readonly at: Date; readonly measuredAt: Date };
  readonly quoted: AcceptedDates & Pick<WantedVersion, "discountPct">;
  readonly status: DemoStatus;
  readonly startedAt: Date;
  readonly finishedAt?: Date;
  readonly countedAt: Date;
  readonly checkedInAt: Date;
  /** Who does the work; the other technician signs. */
  readonly by: "tilda" | "joss";
  readonly clocked?: readonly (Stretch & { readonly operationCode: string })[];
  /** How much of the card is entered, 0 to 1, and when. */
  readonly card: { readonly share: number; readonly during: readonly Stretch[] };
  readonly costs?: readonly {
    readonly kind: "parts" | "dyno";
    readonly what: string;
    readonly minor: number;
  }[];
};

type DemoStatus = Parameters<typeof addJob>[2]["status"];

export type AddedJob = {
  readonly build: DemoBuild;
  readonly job: DemoJob;
  /** How many steps of the card are entered. */
  readonly stepsDone: number;
  readonly baseline: DemoSession | null;
};

export function addLiveJob(day: LiveDay, wanted: LiveJob): AddedJob {
  const { workshop, staff } = day;
  const { inspected, quoted, status, startedAt, finishedAt } = wanted;
  const tilda = staff.person("tilda");
  const build = addEnquiry(day, wanted.enquiry);
  if (inspected) addInspection(day, build, { at: inspected.at, doneById: tilda });
  const { discountPct, ...dates } = quoted;
  const quote = addAcceptedQuote(day, build, dates, discountPct === undefined ? {} : { discountPct });
  const job = addJob(workshop, quote, { status, at: quoted.accepted, startedAt, finishedAt });
  const baseline = inspected
    ? addDynoSession(day, {
        build,
        job,
        kind: "baseline",
        figures: standardFigures(build.vehicle.model),
        operatorId: tilda,
        at: inspected.measuredAt,
      })
    : null;
  addGoodsIn(day, job, { at: wanted.countedAt, countedById: staff.person("joss") });
  addCheckIn(day, job, wanted.checkedInAt, staff.person("noor"));
  return { build, job, baseline, stepsDone: addWork(day, job, wanted) };
}

/** What was clocked, entered and spent. Answers how many steps are entered. */
function addWork(
  day: LiveDay,
  job: DemoJob,
  { by, card, clocked = [], costs = [], ...wanted }: LiveJob,
): number {
  const personId = day.staff.person(by);
  for (const { operationCode, from, to } of clocked)
    addClock(day, job, { personId, operationCode, from, to });
  const count = Math.floor(job.steps.length * card.share);
  addStepEntries(day, job, {
    count,
    during: card.during,
    personId,
    secondPersonId: day.staff.person(by === "joss" ? "tilda" : "joss"),
  });
  const spentAt = wanted.finishedAt ?? wanted.startedAt;
  for (const { kind, what, minor } of costs) addCost(day, job, kind, what, minor, spentAt);
  return count;
}
