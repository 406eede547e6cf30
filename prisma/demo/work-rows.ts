import type { Row } from "./demo-rows";
import type { DemoJob } from "./job-rows";
import { madePdf, madePng } from "./made-files";
import type { DemoBuild } from "./quote-rows";
import type { Scene } from "./scene";

/** The inspection before anything is ordered, passed with ordinary figures unless said. */
export function addInspection(
  { workshop }: Scene,
  build: DemoBuild,
  inspection: { readonly at: Date; readonly doneById: string; readonly failed?: boolean },
): void {
  const { rows, id: workshopId, newId, random, local } = workshop;
  const { at, failed = false } = inspection;
  rows.add("inspection", {
    id: newId(at),
    workshopId,
    buildId: build.id,
    vehicleId: build.vehicle.id,
    doneAt: at,
    doneById: inspection.doneById,
    odometerKm: build.vehicle.odometerKm,
    leakDownWorstPct: failed ? random.integer(19, 30) : random.integer(4, 10),
    leakDownSpreadPct: failed ? random.integer(9, 18) : random.integer(1, 5),
    fuelTrimWorstPct: random.integer(-5, 6),
    misfireCodes: false,
    coolingSound: true,
    outcome: failed ? "failed" : "passed",
    reasons: failed ? ["Leak-down over 12 %, and more than 6 points between cylinders."] : [],
    validUntil: local.dayOf(at).add({ days: 60 }).toString(),
    validToOdometerKm: build.vehicle.odometerKm + 3_000,
  });
}

export function addGoodsIn(
  { workshop }: Scene,
  job: DemoJob,
  goods: { readonly at: Date; readonly countedById: string; readonly missing?: string },
): void {
  workshop.rows.add("goodsIn", {
    id: workshop.newId(goods.at),
    workshopId: workshop.id,
    jobId: job.id,
    complete: goods.missing === undefined,
    missing: goods.missing ?? "",
    countedById: goods.countedById,
    countedAt: goods.at,
  });
}

export function addBooking(
  { workshop, staff }: Scene,
  job: DemoJob,
  booking: {
    readonly resource: string;
    readonly work: string;
    readonly from: Date;
    readonly to: Date;
    readonly madeAt: Date;
  },
): void {
  workshop.rows.add("booking", {
    id: workshop.newId(booking.madeAt),
    workshopId: workshop.id,
    jobId: job.id,
    resourceId: staff.resource(booking.resource),
    work: booking.work,
    startsAt: booking.from,
    endsAt: booking.to,
    createdAt: booking.madeAt,
  });
}

export function addCheckIn({ workshop }: Scene, job: DemoJob, at: Date, personId: string): void {
  const { rows, id: workshopId, newId, random } = workshop;
  rows.add("checkIn", {
    id: newId(at),
    workshopId,
    jobId: job.id,
    odometerKm: job.quote.build.vehicle.odometerKm + random.integer(20, 400),
    keys: 2,
    fuelOctane: job.quote.build.vehicle.model === "vale-30td" ? null : 98,
    ethanolPct: null,
    condition: random.pick([
      "Stone chips on the bonnet, otherwise clean.",
      "Scratch on the left rear door, photographed.",
      "No marks.",
    ]),
    told: [
      "A certified vehicle is not driven on the road until the certificate is attached.",
      "Valuables are taken out.",
    ],
    personId,
    at,
  });
}

export function addClock(
  { workshop }: Scene,
  job: DemoJob,
  clock: {
    readonly personId: string;
    readonly operationCode: string;
    readonly from: Date;
    readonly to: Date;
  },
): void {
  workshop.rows.add("clockEntry", {
    id: workshop.newId(clock.from),
    workshopId: workshop.id,
    jobId: job.id,
    personId: clock.personId,
    operationCode: clock.operationCode,
    startedAt: clock.from,
    stoppedAt: clock.to,
  });
}

export function addCost(
  { workshop }: Scene,
  job: DemoJob,
  kind: "parts" | "boughtIn" | "dyno" | "rework" | "other",
  description: string,
  amountMinor: number,
  at: Date,
): void {
  if (Math.round(amountMinor) === 0) return;
  workshop.rows.add("jobCost", {
    id: workshop.newId(at),
    workshopId: workshop.id,
    jobId: job.id,
    kind,
    description,
    amountMinor: Math.round(amountMinor),
    at,
  });
}

export type Stretch = { readonly from: Date; readonly to: Date };

/** Enters the first `count` steps of the card, spread evenly over the stretches in which work was done. */
export function addStepEntries(
  scene: Scene,
  job: DemoJob,
  work: {
    readonly count: number;
    readonly during: readonly Stretch[];
    readonly personId: string;
    readonly secondPersonId: string;
  },
): void {
  const { workshop } = scene;
  const length = work.during.reduce((sum, { from, to }) => sum + (to.getTime() - from.getTime()), 0);
  job.steps.slice(0, work.count).forEach((step, index) => {
    const at = along(work.during, (length * (index + 1)) / (work.count + 1));
    workshop.rows.add("stepEntry", {
      id: workshop.newId(at),
      workshopId: workshop.id,
      stepId: step.id,
      jobId: job.id,
      ...whatWasEntered(scene, step, { at, odometerKm: job.quote.build.vehicle.odometerKm }),
      personId: step.kind === "holdPoint" ? work.secondPersonId : work.personId,
      at,
      recordedAt: at,
    });
  });
}

/** The instant after so many milliseconds of the stretches taken one after another. */
function along(stretches: readonly Stretch[], milliseconds: number): Date {
  let left = Math.round(milliseconds);
  for (const { from, to } of stretches) {
    const length = to.getTime() - from.getTime();
    if (left <= length) return new Date(from.getTime() + left);
    left -= length;
  }
  throw new Error("no work was done at that time");
}

type Entered = Pick<Row<"stepEntry">, "kind" | "value" | "text" | "photoSha256" | "withinLimits">;

type Moment = { readonly at: Date; readonly odometerKm: number };

function whatWasEntered(
  { workshop, files }: Scene,
  step: Row<"jobStep">,
  { at, odometerKm }: Moment,
): Entered {
  const { random } = workshop;
  const nothing = { value: null, text: "", photoSha256: null, withinLimits: null };
  switch (step.kind) {
    case "measurement":
    case "torque": {
      if (isOdometer(step)) return { ...nothing, kind: "value", value: odometerKm, withinLimits: true };
      const low = step.low ?? step.target ?? step.high ?? 0;
      const high = step.high ?? step.target ?? low;
      const value = step.target ?? asRead(low + (high - low) * random.between(0.3, 0.7), high - low);
      return { ...nothing, kind: "value", value, withinLimits: true };
    }
    case "photo": {
      const photo = files.keep(
        workshop,
        "made-photo.png",
        "image/png",
        photoOf(random.integer(3, 9) * 10),
        at,
      );
      return { ...nothing, kind: "photo", photoSha256: photo };
    }
    case "serial":
      return { ...nothing, kind: "value", text: `SN-${random.integer(100_000, 999_999)}` };
    case "holdPoint":
      return { ...nothing, kind: "signed" };
    default:
      return { ...nothing, kind: "done" };
  }
}

/** A figure as a gauge gives it: as fine as the limits it is read against need. */
function asRead(value: number, span: number): number {
  const decimals = span >= 20 ? 0 : span >= 2 ? 1 : 2;
  return Number(value.toFixed(decimals));
}

/** The one reading that belongs to the vehicle: it is what the inspection has on record. */
function isOdometer({ operationCode, unit }: Row<"jobStep">): boolean {
  return operationCode === "inspect-vehicle" && unit === "km";
}

const photos = new Map<number, Uint8Array>();

/** A few pictures serve all steps; each is drawn once. */
function photoOf(shade: number): Uint8Array {
  const photo = photos.get(shade) ?? madePng(shade);
  photos.set(shade, photo);
  return photo;
}

/** A made certificate or record for each obligation of the job. */
export function addEvidence(
  { workshop, files }: Scene,
  job: DemoJob,
  by: { readonly at: Date; readonly personId: string },
): void {
  const bytes = madePdf([
    "Made for the demonstration",
    "This page stands for a certificate or a record.",
    "It certifies nothing.",
  ]);
  for (const obligationId of job.obligationIds) {
    const sha256 = files.keep(workshop, "made-certificate.pdf", "application/pdf", bytes, by.at);
    workshop.rows.add("evidence", {
      id: workshop.newId(by.at),
      workshopId: workshop.id,
      obligationId,
      sha256,
      name: "made-certificate.pdf",
      note: "",
      signatoryName: "made signatory",
      uploadedById: by.personId,
      at: by.at,
    });
  }
}

export function addHandOver(
  { workshop }: Scene,
  job: DemoJob,
  by: { readonly at: Date; readonly personId: string },
): void {
  const { rows, id: workshopId, newId, local, random } = workshop;
  const { vehicle } = job.quote.build;
  const isBoosted = job.quote.priced.items.some(({ id }) => id === "retorque-visit");
  rows.add("handOver", {
    id: newId(by.at),
    workshopId,
    jobId: job.id,
    odometerKm: vehicle.odometerKm + random.integer(410, 600),
    receivedBy: vehicle.customer.name,
    followUpOn: isBoosted ? local.dayOf(by.at).add({ days: 21 }).toString() : null,
    note: "",
    personId: by.personId,
    at: by.at,
  });
}
