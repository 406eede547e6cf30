import { newId } from "../core/new-id";
import type { nextNumber } from "../core/next-number";
import { storedDate } from "../core/site-date";
import { openJob } from "../jobs/open-job";
import { demoNow } from "./demo-moment";
import type { demoWorkshop } from "./demo-workshop";
import { measureBaseline } from "./measured-baseline";

type Trial = ReturnType<typeof demoWorkshop>;

export type AcceptedJob = {
  readonly workshopId: string;
  readonly jobId: string;
  readonly number: number;
  readonly quoteId: string;
  readonly versionId: string;
  readonly vehicleId: string;
  readonly plate: string;
  readonly customerId: string;
};

type Wanted = {
  /** The selection: the package Long Grade 2.4 with the hot kit, unless said otherwise. */
  readonly items?: readonly string[];
  readonly model?: string;
  readonly deposit?: boolean;
  /** Whether the inspection passed, failed or was never made. */
  readonly inspection?: "passed" | "failed" | "none";
  readonly goods?: boolean;
  /** Whether the promise of the package has its baseline; a selection of one's own promises nothing. */
  readonly baseline?: boolean;
  readonly odometerKm?: number;
};

let made = 0;

/** A job as it stands after the customer has accepted, with deposit, inspection, baseline and parts as asked. */
export async function acceptedJob(trial: Trial, wanted: Wanted = {}): Promise<AcceptedJob> {
  const context = await trial.as("manager");
  if (context.actor.kind !== "person") throw new Error("the manager is a person");
  const { workshopId, personId } = context.actor;
  const ids = {
    customerId: newId(),
    vehicleId: newId(),
    buildId: newId(),
    quoteId: newId(),
    versionId: newId(),
  };
  made += 1;
  const plate = `JT${made} ${100 + made}`;
  const odometerKm = wanted.odometerKm ?? 24_310;
  const job = await trial.database.inWorkshop(workshopId, async (tx) => {
    const model = await tx.vehicleModel.findFirstOrThrow({ where: { code: wanted.model ?? "ridgewold-57" } });
    const pack = await tx.package.findFirstOrThrow({ where: { code: "long-grade-24" } });
    const itemCodes = wanted.items ?? [...pack.items, "charge-cooler-hot-kit"];
    const { customerId, vehicleId, buildId, quoteId, versionId } = ids;
    await tx.customer.create({
      data: {
        id: customerId,
        workshopId,
        name: `Customer ${made}`,
        phone: "0491 570 006",
        email: "c@kerb.example",
      },
    });
    await tx.vehicle.create({
      data: {
        id: vehicleId,
        workshopId,
        customerId,
        vehicleModelId: model.id,
        vin: `7A9JBTEST000${String(made).padStart(5, "0")}`,
        plate,
        odometerKm,
        fuelKind: "petrol",
        fuelOctane: 98,
        uses: ["towing"],
      },
    });
    await tx.build.create({
      data: {
        id: buildId,
        workshopId,
        number: 9_000 + made,
        customerId,
        vehicleId,
        goal: "Tow 3 t over the ranges",
      },
    });
    if (wanted.inspection !== "none") {
      const outcome = wanted.inspection ?? "passed";
      await inspect(tx, { workshopId, buildId, vehicleId, personId, odometerKm, outcome });
    }
    if (!wanted.items && (wanted.baseline ?? true))
      await measureBaseline(tx, { workshopId, vehicleId, buildId });
    await tx.quote.create({
      data: { id: quoteId, workshopId, number: 9_000 + made, buildId, customerId, vehicleId },
    });
    await tx.quoteVersion.create({
      data: {
        id: versionId,
        workshopId,
        quoteId,
        versionNo: 1,
        validUntil: storedDate("2026-12-20"),
        currency: "AUD",
        netMinor: 3_200_000n,
        taxMinor: 320_000n,
        grossMinor: 3_520_000n,
        depositMinor: 1_600_000n,
        labourHours: "37.1",
        dynoHours: "7.5",
        ...(wanted.items ? {} : { promise: pack.promise ?? {} }),
        selection: { items: itemCodes.map((code) => ({ code, quantity: 1 })), findings: [] },
        goal: "Tow 3 t over the ranges",
      },
    });
    await tx.quoteVersion.update({ where: { id: versionId }, data: { status: "issued", issuedAt: demoNow } });
    await tx.quoteVersion.update({ where: { id: versionId }, data: { status: "accepted" } });
    await tx.acceptance.create({
      data: {
        id: newId(),
        workshopId,
        versionId,
        name: `Customer ${made}`,
        at: demoNow,
        address: "203.0.113.9",
        statement: "I accept.",
      },
    });
    if (wanted.deposit ?? true) await pay(tx, workshopId, quoteId, "deposit", 1_600_000n);
    const work = { tx, workshopId, now: demoNow, audit: () => {} };
    const opened = await openJob(work, {
      id: versionId,
      quoteId,
      buildId,
      customerId,
      vehicleId,
      packageCode: wanted.items ? null : "long-grade-24",
      itemCodes,
    });
    if (wanted.goods ?? true) {
      await tx.goodsIn.create({
        data: {
          id: newId(),
          workshopId,
          jobId: opened.id,
          complete: true,
          countedById: personId,
          countedAt: demoNow,
        },
      });
    }
    return opened;
  });
  return { workshopId, jobId: job.id, number: job.number, plate, ...ids };
}

type Tx = Parameters<typeof nextNumber>[0];

async function inspect(
  tx: Tx,
  inspection: {
    readonly workshopId: string;
    readonly buildId: string;
    readonly vehicleId: string;
    readonly personId: string;
    readonly odometerKm: number;
    readonly outcome: "passed" | "failed";
  },
): Promise<void> {
  const { personId, outcome, ...rest } = inspection;
  const passed = outcome === "passed";
  await tx.inspection.create({
    data: {
      ...rest,
      id: newId(),
      doneAt: new Date(demoNow.getTime() - 5 * 86_400_000),
      doneById: personId,
      leakDownWorstPct: passed ? 8 : 19,
      leakDownSpreadPct: 3,
      fuelTrimWorstPct: 2,
      misfireCodes: false,
      coolingSound: true,
      outcome,
      reasons: passed ? [] : ["Leak-down 19 % on the worst cylinder, above 12 %."],
      validUntil: storedDate("2027-01-19"),
      validToOdometerKm: rest.odometerKm + 3_000,
    },
  });
}

export async function pay(
  tx: Tx,
  workshopId: string,
  quoteId: string,
  kind: "deposit" | "balance" | "refund",
  amountMinor: bigint,
): Promise<void> {
  await tx.payment.create({
    data: {
      id: newId(),
      workshopId,
      quoteId,
      kind,
      heldAs: kind === "deposit" ? "security" : "",
      amountMinor,
      method: "transfer",
      receivedOn: storedDate("2026-11-25"),
      recordedAt: demoNow,
    },
  });
}

/** Every open step of a job, done within its limits, as the floor would enter it. */
export async function doAllSteps(
  trial: Trial,
  job: Pick<AcceptedJob, "workshopId" | "jobId">,
  except: (step: {
    readonly id: string;
    readonly kind: string;
    readonly operationCode: string;
  }) => boolean = () => false,
): Promise<void> {
  const technician = await trial.as("technician");
  if (technician.actor.kind !== "person") throw new Error("the technician is a person");
  const { personId } = technician.actor;
  await trial.database.inWorkshop(job.workshopId, async (tx) => {
    const steps = await tx.jobStep.findMany({ where: { jobId: job.jobId } });
    await tx.stepEntry.createMany({
      data: steps
        .filter((step) => !except(step))
        .map((step) => ({
          id: newId(),
          workshopId: job.workshopId,
          stepId: step.id,
          jobId: job.jobId,
          kind: step.kind === "holdPoint" ? "signed" : step.low === null ? "done" : "value",
          value: step.target ?? step.low,
          withinLimits: step.low === null ? null : true,
          personId,
          at: demoNow,
          recordedAt: demoNow,
        })),
    });
  });
}
