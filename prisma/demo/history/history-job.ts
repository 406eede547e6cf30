import { standardFigures } from "../dyno-curve";
import { addDynoSession, addVerdict, type DemoSession } from "../dyno-rows";
import { addJob, type DemoJob } from "../job-rows";
import { packagePromise } from "../package-items";
import { addPayment, type DemoQuote } from "../quote-rows";
import type { Scene } from "../scene";
import {
  addBooking,
  addCheckIn,
  addClock,
  addEvidence,
  addGoodsIn,
  addHandOver,
  addInspection,
  addStepEntries,
} from "../work-rows";
import type { Enquiry } from "./enquiry";
import { addActualCosts } from "./job-actuals";
import type { Visit } from "./job-times";
import type { PlannedJob } from "./planned-job";
import { type WorkingTime, whole } from "./working-time";

const DAY_MS = 86_400_000;

/** Everything that a job left behind, from acceptance to the keys. */
export function addHistoryJob(
  scene: Scene,
  time: WorkingTime,
  enquiry: Enquiry,
  planned: PlannedJob,
  quote: DemoQuote,
): void {
  const { workshop, staff } = scene;
  const work = planned.times.visits.find(({ kind }) => kind === "fitting") ?? planned.times.visits[0];
  const startedAt = work ? start(time, work) : planned.finishedAt;
  const job = addJob(workshop, quote, {
    status: planned.failsInspection ? "stopped" : "handedOver",
    at: enquiry.decidedAt,
    startedAt,
    finishedAt: planned.finishedAt,
    ...(planned.failsInspection
      ? { stopped: { at: planned.finishedAt, because: "The vehicle failed its pre-build inspection." } }
      : {}),
  });
  for (const visit of planned.times.visits) addVisit(scene, time, job, visit, enquiry.decidedAt);
  addActualCosts(scene, job, planned, enquiry.want);
  const baseline = addInspectionOf(scene, time, job, planned);
  addPayments(scene, quote, enquiry, planned);
  if (planned.failsInspection) return;

  addGoodsIn(scene, job, { at: dayBefore(time, startedAt), countedById: staff.person("joss") });
  addCheckIn(scene, job, new Date(startedAt.getTime() - 10 * 60_000), staff.person("noor"));
  addProof(scene, time, job, enquiry, planned, baseline);
  const hasReturned = planned.times.visits.some(({ kind }) => kind === "re-torque");
  const isLater = new Set(
    quote.priced.operations.flatMap((each) => (each.stage === "after" ? [each.id] : [])),
  );
  addStepEntries(scene, job, {
    count: job.steps.filter((step) => hasReturned || !isLater.has(step.operationCode)).length,
    during: planned.times.visits.flatMap(({ slot }) => time.stretches(slot.from, slot.to)),
    personId: personOf(scene, work),
    secondPersonId: staff.person(work?.resources.includes("Joss Varga") ? "tilda" : "joss"),
  });
  addEvidence(scene, job, {
    at: new Date(planned.handedOverAt.getTime() - 30 * 60_000),
    personId: staff.person("noor"),
  });
  addHandOver(scene, job, { at: planned.handedOverAt, personId: staff.person("noor") });
}

function addVisit(scene: Scene, time: WorkingTime, job: DemoJob, visit: Visit, madeAt: Date): void {
  const { slot, resources, tasks, kind } = visit;
  const days = byDay(scene, time, slot.from, slot.to);
  const [person = "", place] = resources;
  const work = workWords[kind];
  for (const { from, to } of days) addBooking(scene, job, { resource: person, work, from, to, madeAt });
  // A vehicle that is apart keeps its hoist overnight.
  if (place)
    addBooking(scene, job, { resource: place, work, ...whole(time.stretches(slot.from, slot.to)), madeAt });
  const personId = personOf(scene, visit);
  let from = slot.from;
  for (const task of tasks) {
    for (const stretch of time.stretches(from, from + task.minutes)) {
      addClock(scene, job, { personId, operationCode: task.code, ...stretch });
    }
    from += task.minutes;
  }
}

const workWords: Readonly<Record<Visit["kind"], string>> = {
  inspection: "Pre-build inspection",
  baseline: "Baseline",
  fitting: "Fitting",
  dyno: "Calibration and proof",
  "second-dyno": "Second dyno visit",
  finishing: "Road test and check-out",
  "re-torque": "Re-torque",
};

/** One stretch for each day, its lunch hour included. */
function byDay({ workshop }: Scene, time: WorkingTime, from: number, to: number) {
  const days = new Map<string, { from: Date; to: Date }>();
  for (const stretch of time.stretches(from, to)) {
    const day = workshop.local.dayOf(stretch.from).toString();
    const known = days.get(day);
    if (known) known.to = stretch.to;
    else days.set(day, { ...stretch });
  }
  return days.values();
}

function dayBefore(time: WorkingTime, at: Date): Date {
  const minute = Math.max(0, time.minuteAt(at) - 300);
  return whole(time.stretches(minute, minute + 1)).from;
}

const start = (time: WorkingTime, { slot }: Visit) => whole(time.stretches(slot.from, slot.to)).from;
const end = (time: WorkingTime, { slot }: Visit) => whole(time.stretches(slot.from, slot.to)).to;

function personOf({ staff }: Scene, visit: Visit | undefined): string {
  return staff.person(visit?.resources[0]?.split(" ")[0]?.toLowerCase() ?? "joss");
}

function addInspectionOf(
  scene: Scene,
  time: WorkingTime,
  job: DemoJob,
  { times, failsInspection }: PlannedJob,
): DemoSession | undefined {
  const { build } = job.quote;
  const inspection = times.visits.find(({ kind }) => kind === "inspection");
  if (!inspection) return undefined;
  addInspection(scene, build, {
    at: end(time, inspection),
    doneById: personOf(scene, inspection),
    failed: failsInspection,
  });
  const visit = times.visits.find(({ kind }) => kind === "baseline");
  // A torque-limited diesel is not corrected and has no promised figure, so no log of it is kept here.
  if (!visit || build.vehicle.model === "vale-30td") return undefined;
  return addDynoSession(scene, {
    build,
    job,
    kind: "baseline",
    figures: standardFigures(build.vehicle.model),
    operatorId: personOf(scene, visit),
    at: end(time, visit),
  });
}

function addProof(
  scene: Scene,
  time: WorkingTime,
  job: DemoJob,
  { want }: Enquiry,
  { times }: PlannedJob,
  baseline: DemoSession | undefined,
): void {
  const { proof } = want;
  const visits = times.visits.filter(({ kind }) => kind === "dyno" || kind === "second-dyno");
  const last = visits.at(-1);
  if (!proof || !baseline || !last) return;
  const { build } = job.quote;
  const peakKw = scene.workshop.random.normal(proof.kw, proof.deviation);
  const session = (visit: Visit, kind: "step" | "proof", share: number) =>
    addDynoSession(scene, {
      build,
      job,
      kind,
      figures: {
        model: build.vehicle.model,
        peakKw: peakKw * share,
        peakNm: (proof.nm * share * peakKw) / proof.kw,
        boostKPa: proof.boostKPa,
      },
      operatorId: personOf(scene, visit),
      at: end(time, visit),
    });
  for (const visit of visits.slice(0, -1)) session(visit, "step", 0.955);
  const proven = session(last, "proof", 1);
  const at = new Date(end(time, last).getTime() + 5 * 60_000);
  addVerdict(
    scene,
    job,
    { baseline, proof: proven },
    { personId: personOf(scene, last), at },
    packagePromise(want.code),
  );
}

function addPayments(
  { workshop, staff }: Scene,
  quote: DemoQuote,
  enquiry: Enquiry,
  planned: PlannedJob,
): void {
  const { depositMinor, grossMinor } = quote.priced;
  const recordedById = staff.person("noor");
  const depositAt = new Date(enquiry.decidedAt.getTime() + 0.6 * DAY_MS);
  addPayment(workshop, quote, { kind: "deposit", amountMinor: depositMinor, at: depositAt, recordedById });
  const at = new Date(planned.handedOverAt.getTime() - 20 * 60_000);
  if (planned.failsInspection) {
    // The inspection is paid for; the rest of the deposit goes back.
    const amountMinor = depositMinor - FAILED_INSPECTION_MINOR;
    addPayment(workshop, quote, { kind: "refund", amountMinor, at, recordedById });
  } else {
    addPayment(workshop, quote, {
      kind: "balance",
      amountMinor: grossMinor - depositMinor,
      at,
      recordedById,
    });
  }
}

const FAILED_INSPECTION_MINOR = 850_00;
