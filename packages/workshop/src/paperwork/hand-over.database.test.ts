import { describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { clearFault, raiseFault } from "../floor/faults";
import { countGoodsIn } from "../jobs/count-goods-in";
import { listJobs } from "../jobs/list-jobs";
import { moveJob } from "../jobs/move-job";
import { readJob } from "../jobs/read-job";
import { stopJob } from "../jobs/stop-job";
import { recordPayment } from "../quotes/record-payment";
import { type AcceptedJob, acceptedJob, doAllSteps, pay } from "../testing/accepted-job";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { attachEvidence, LARGEST_EVIDENCE_BYTES } from "./attach-evidence";
import { finishWork } from "./finish-work";
import { handOver } from "./hand-over";
import { handOverPack } from "./hand-over-pack";
import { layOutPaperwork } from "./lay-out";
import { readFile } from "./read-file";
import { readHandOver } from "./read-hand-over";
import { UploadedFile } from "./uploaded-file";

const trial = demoWorkshop();

/** The first bytes of a PDF and of a PNG: ISO 32000-2 section 7.5.2; W3C PNG section 5.2. */
const pdf = new TextEncoder().encode("%PDF-1.7\n1 0 obj<<>>endobj\ntrailer<<>>\n%%EOF\n");

const pointsOf = (refusal: { data?: unknown }) =>
  (refusal.data as { points: readonly string[] }).points.join("\n"); // Refusals of these use cases list points.

async function inWork(job: AcceptedJob) {
  const technician = await trial.as("technician");
  if (technician.actor.kind !== "person") throw new Error("the technician is a person");
  const { personId } = technician.actor;
  await trial.database.inWorkshop(job.workshopId, async (tx) => {
    const work = { tx, now: demoNow, audit: () => {} };
    for (const to of ["booked", "checkedIn", "inWork"] as const) {
      const moved = await moveJob(work, job.jobId, to);
      if (!moved.ok) throw new Error(moved.refusal.sentence);
    }
    await tx.checkIn.create({
      data: {
        id: newId(),
        workshopId: job.workshopId,
        jobId: job.jobId,
        odometerKm: 24_320,
        keys: 2,
        condition: "Clean",
        told: [],
        personId,
        at: demoNow,
      },
    });
  });
}

async function obligation(job: AcceptedJob, code: string): Promise<string> {
  const [row] = await trial.sql("select id from obligation where job_id = $1 and code = $2", [
    job.jobId,
    code,
  ]);
  return String(row?.id);
}

async function certify(job: AcceptedJob) {
  return trial.done("desk", attachEvidence, {
    obligationId: await obligation(job, "engineering-certificate"),
    file: new UploadedFile("certificate.pdf", pdf),
    signatoryName: "R. Halvorsen",
  });
}

async function prove(job: AcceptedJob) {
  await trial.sql(
    `with sessions as (
       insert into dyno_session (id, workshop_id, vehicle_id, job_id, kind, standard, edition, "barometer_kPa", air_temp_c,
         relative_humidity_pct, factor, factor_valid, gear, smoothing_rpm, done_at, source_sha256, source_name, row_count)
       select gen_random_uuid(), $1, $2, $3, kind::dyno_kind, 'SAE J1349', '2004', 99.2, 31, 30, 1.02, true, '5', 100, now(),
         repeat('0', 64), 'log.csv', 3 from unnest(array['baseline', 'proof']) kind
       returning id, kind)
     insert into verdict (id, workshop_id, job_id, baseline_id, proof_id, outcome, promised_low_kw, promised_high_kw,
       measured_kw, gain_kw, spread_pct, sentence, person_id, at)
     select gen_random_uuid(), $1, $3, (select id from sessions where kind = 'baseline'),
       (select id from sessions where kind = 'proof'), 'kept', 350, 390, 366, 105, 1.1,
       'Kept: 366 kW at the hubs, promised 350 to 390.', (select id from person where email = 'tilda@saltbush.example'), now()`,
    [job.workshopId, job.vehicleId, job.jobId],
  );
}

async function payBalance(job: AcceptedJob) {
  await trial.database.inWorkshop(job.workshopId, (tx) =>
    pay(tx, job.workshopId, job.quoteId, "balance", 1_920_000n),
  );
}

async function revisionOf(job: AcceptedJob): Promise<number> {
  return (await trial.done("desk", readHandOver, { jobId: job.jobId })).revision;
}

async function given(job: AcceptedJob, other: object = {}) {
  return {
    jobId: job.jobId,
    revision: await revisionOf(job),
    receivedBy: "Customer",
    odometerKm: 24_390,
    keys: 2,
    followUpOn: "2027-01-12",
    ...other,
  };
}

/** A job on which everything is done but what is named. */
async function nearlyDone(without: "certificate" | "balance" | "verdict" | "nothing"): Promise<AcceptedJob> {
  const job = await acceptedJob(trial);
  await inWork(job);
  await doAllSteps(trial, job);
  if (without !== "verdict") await prove(job);
  if (without !== "certificate") await certify(job);
  if (without !== "balance") await payBalance(job);
  return job;
}

describe("what a Long Grade 2.4 has to show", () => {
  test("is laid out when its job opens: certificate, torques, hold points, proof, monitors, and law to confirm", async () => {
    const job = await acceptedJob(trial);
    const page = await trial.done("desk", readHandOver, { jobId: job.jobId });
    const codes = page.obligations.map(({ code }) => code);
    expect(codes).toEqual([
      "engineering-certificate",
      "torque-record",
      "hold-points-signed",
      "dyno-verdict",
      "readiness-monitors",
      "forced-induction-approval",
      "drivers-and-insurer-told",
      "re-torque-booked",
      "tax-invoice",
      "maker-warranty",
    ]);
    expect(page.notLaidOut).toBe(0);
    const law = page.obligations.find(({ code }) => code === "forced-induction-approval");
    expect(law).toMatchObject({ blocksHandOver: false, safety: false });
  });

  test("can be laid out later, once", async () => {
    const job = await acceptedJob(trial);
    await trial.sql("delete from obligation where job_id = $1", [job.jobId]);
    expect((await trial.done("desk", layOutPaperwork, { jobId: job.jobId })).laidOut).toBe(10);
    expect((await trial.done("desk", layOutPaperwork, { jobId: job.jobId })).laidOut).toBe(0);
  });
});

describe("evidence", () => {
  const attach = async (file: UploadedFile, other: object = {}) =>
    trial.refused("desk", attachEvidence, {
      obligationId: await obligation(await acceptedJob(trial), "engineering-certificate"),
      file,
      signatoryName: "R. Halvorsen",
      ...other,
    });

  test("is kept by its bytes and can be read back by its workshop only", async () => {
    const job = await acceptedJob(trial);
    const { sha256 } = await certify(job);
    const read = await trial.done("technician", readFile, { sha256 });
    expect(read).toMatchObject({ name: "certificate.pdf", mediaType: "application/pdf" });
    expect([...read.bytes]).toEqual([...pdf]);
    expect((await trial.refused("gulfOwner", readFile, { sha256 })).code).toBe("file-not-found");
  });

  test("that only calls itself a PDF is refused", async () => {
    const refusal = await attach(
      new UploadedFile("certificate.pdf", new TextEncoder().encode("hello there")),
    );
    expect(refusal.code).toBe("file-kind");
  });

  test("that is empty is refused", async () => {
    expect((await attach(new UploadedFile("certificate.pdf", new Uint8Array()))).code).toBe("file-empty");
  });

  test("of more than 20 MB is refused", async () => {
    const large = new Uint8Array(LARGEST_EVIDENCE_BYTES + 1);
    large.set(pdf);
    expect((await attach(new UploadedFile("scan.pdf", large))).sentence).toContain("at most 20 MB");
  });

  test("of a signatory names who signed", async () => {
    const refusal = await attach(new UploadedFile("certificate.pdf", pdf), { signatoryName: " " });
    expect(refusal.code).toBe("signatory-missing");
  });

  test("is not taken in place of a record: no file stands in for a torque", async () => {
    const job = await acceptedJob(trial);
    for (const code of ["torque-record", "hold-points-signed", "dyno-verdict", "re-torque-booked"]) {
      const obligationId = await obligation(job, code);
      const file = new UploadedFile("record.pdf", pdf);
      expect((await trial.refused("desk", attachEvidence, { obligationId, file })).code).toBe(
        "record-not-uploaded",
      );
    }
  });

  test("is not attached by a technician, nor to another workshop's obligation", async () => {
    const obligationId = await obligation(await acceptedJob(trial), "engineering-certificate");
    const file = new UploadedFile("certificate.pdf", pdf);
    const input = { obligationId, file, signatoryName: "R. Halvorsen" };
    expect((await trial.refused("technician", attachEvidence, input)).code).toBe("not-allowed");
    expect((await trial.refused("gulfOwner", attachEvidence, input)).code).toBe("obligation-not-found");
  });
});

describe("hand-over", () => {
  test("is refused with every open point", async () => {
    const job = await acceptedJob(trial);
    await inWork(job);
    const refusal = await trial.refused("desk", handOver, await given(job));
    expect(refusal.code).toBe("hand-over-open");
    const points = pointsOf(refusal);
    expect(points).toContain("steps of the job card are not done");
    expect(points).toContain("Certificate of a licensed signatory. Open: attach the certificate.");
    expect(points).toContain("hold points open");
    expect(points).toContain("No verdict is released yet");
    expect(points).toContain("Balance not paid: $19,200.00 of $35,200.00 is outstanding.");
  });

  test("waits for the certificate: until then the vehicle is done, not for road use", async () => {
    const job = await nearlyDone("certificate");
    const { status } = await trial.done("technician", finishWork, { jobId: job.jobId });
    expect(status).toBe("doneNotForRoad");
    const refusal = await trial.refused("desk", handOver, await given(job));
    expect(pointsOf(refusal)).toBe("Certificate of a licensed signatory. Open: attach the certificate.");
    await certify(job);
    expect((await trial.done("desk", readJob, { jobId: job.jobId })).status).toBe("ready");
    await trial.done("desk", handOver, await given(job));
    expect((await trial.done("desk", readJob, { jobId: job.jobId })).status).toBe("handedOver");
  });

  test("waits for the balance: until then the vehicle is done, unpaid", async () => {
    const job = await nearlyDone("balance");
    const { status } = await trial.done("manager", finishWork, { jobId: job.jobId });
    expect(status).toBe("doneUnpaid");
    expect(pointsOf(await trial.refused("desk", handOver, await given(job)))).toContain("Balance not paid");
  });

  test("waits for the verdict that the promise is judged by", async () => {
    const job = await nearlyDone("verdict");
    expect(pointsOf(await trial.refused("desk", handOver, await given(job)))).toContain(
      "No verdict is released",
    );
  });

  test("waits for obligations that were never laid out", async () => {
    const job = await nearlyDone("nothing");
    await trial.sql("delete from obligation where job_id = $1 and code = 'hold-points-signed'", [job.jobId]);
    const refusal = await trial.refused("desk", handOver, await given(job));
    expect(pointsOf(refusal)).toContain("Not on the list of obligations yet: Every hold point signed");
  });

  test("waits for a fault to be cleared", async () => {
    const job = await nearlyDone("nothing");
    await trial.sql(
      `insert into fault (id, workshop_id, job_id, sentence, raised_by_id, raised_at)
       select gen_random_uuid(), $1, $2, 'Weeping axle seal', id, now() from person limit 1`,
      [job.workshopId, job.jobId],
    );
    expect(pointsOf(await trial.refused("desk", handOver, await given(job)))).toBe(
      "Fault not cleared: Weeping axle seal",
    );
    expect((await trial.refused("technician", finishWork, { jobId: job.jobId })).code).toBe("work-not-done");
  });

  test("waits for a torque that was left out, and for one outside its limits", async () => {
    const job = await acceptedJob(trial);
    await inWork(job);
    await prove(job);
    await certify(job);
    await payBalance(job);
    let leftOut = "";
    await doAllSteps(trial, job, ({ id, kind, operationCode }) => {
      if (leftOut === "" && kind === "torque" && operationCode === "fit-blower-24") leftOut = id;
      return id === leftOut;
    });
    const open = pointsOf(await trial.refused("desk", handOver, await given(job)));
    expect(open).toContain("Fastener torque record complete. 1 of");
    await trial.sql(
      `insert into step_entry (id, workshop_id, step_id, job_id, kind, value, within_limits, person_id, at, recorded_at)
       select gen_random_uuid(), $1, $2, $3, 'value', 2, false, id, now(), now() from person where email = 'tilda@saltbush.example'`,
      [job.workshopId, leftOut, job.jobId],
    );
    const loose = pointsOf(await trial.refused("desk", handOver, await given(job)));
    expect(loose).toContain("Fastener torque record complete. 1 of");
  });

  test("records receiver, odometer, keys and follow-up, and writes the job's record down as evidence", async () => {
    const job = await nearlyDone("nothing");
    await trial.done("desk", handOver, await given(job));
    const page = await trial.done("desk", readHandOver, { jobId: job.jobId });
    expect(page.handOver).toMatchObject({
      receivedBy: "Customer",
      odometerKm: 24_390,
      keys: 2,
      followUpOn: "2027-01-12",
    });
    const torques = page.obligations.find(({ code }) => code === "torque-record")?.evidence[0];
    const record = await trial.done("desk", readFile, { sha256: String(torques?.sha256) });
    expect(record.mediaType).toBe("text/csv");
    expect(new TextDecoder().decode(record.bytes)).toContain("N·m");
    const [vehicle] = await trial.sql("select odometer_km from vehicle where id = $1", [job.vehicleId]);
    expect(vehicle?.odometer_km).toBe(24_390);
  });

  test("makes a pack for the glove box, which is not there before", async () => {
    const job = await nearlyDone("nothing");
    const before = await trial.refused("desk", handOverPack, { jobId: job.jobId });
    expect(before.code).toBe("not-handed-over");
    await trial.done("desk", handOver, await given(job));
    const once = await trial.done("technician", handOverPack, { jobId: job.jobId });
    const twice = await trial.done("technician", handOverPack, { jobId: job.jobId });
    expect(new TextDecoder("latin1").decode(once.bytes.subarray(0, 5))).toBe("%PDF-");
    expect(Buffer.from(once.bytes).equals(Buffer.from(twice.bytes))).toBe(true);
    expect((await trial.refused("gulfOwner", handOverPack, { jobId: job.jobId })).code).toBe("job-not-found");
  });

  test("happens once", async () => {
    const job = await nearlyDone("nothing");
    const input = await given(job);
    await trial.done("desk", handOver, input);
    expect((await trial.refused("desk", handOver, input)).code).toBe("already-handed-over");
  });

  test("of a job that somebody else changed meanwhile is told", async () => {
    const job = await nearlyDone("nothing");
    const refusal = await trial.refused("desk", handOver, await given(job, { revision: 1 }));
    expect(refusal.code).toBe("job-stale");
  });

  test.each([
    ["an odometer below the check-in", { odometerKm: 24_319 }, "odometer-back"],
    ["fewer keys than were taken in, without a word", { keys: 1 }, "keys-missing"],
    ["no day for the re-torque visit", { followUpOn: null }, "follow-up-missing"],
    ["a follow-up in the past", { followUpOn: "2026-11-24" }, "follow-up-past"],
    ["no receiver", { receivedBy: " " }, "invalid-input"],
    ["no keys at all", { keys: 0 }, "invalid-input"],
    ["half a kilometre", { odometerKm: 24_390.5 }, "invalid-input"],
  ])("with %s is refused", async (_, other, code) => {
    const job = await nearlyDone("nothing");
    expect((await trial.refused("desk", handOver, await given(job, other))).code).toBe(code);
  });

  test("of a vehicle whose work never began is refused", async () => {
    const job = await acceptedJob(trial, { items: ["dark-trim"], inspection: "none" });
    await payBalance(job);
    await doAllSteps(trial, job);
    const refusal = await trial.refused("desk", handOver, await given(job));
    expect(pointsOf(refusal)).toContain("waiting for its booking");
  });

  test("is not for technicians, nor for another workshop", async () => {
    const job = await acceptedJob(trial);
    const input = await given(job);
    expect((await trial.refused("technician", handOver, input)).code).toBe("not-allowed");
    expect((await trial.refused("gulfOwner", handOver, input)).code).toBe("job-not-found");
  });
});

describe("the database itself", () => {
  async function asApplication(
    job: AcceptedJob,
    sql: (tx: { $executeRawUnsafe(text: string): Promise<number> }) => Promise<number>,
  ) {
    return trial.database.inWorkshop(job.workshopId, (tx) => sql(tx));
  }

  test("refuses a hand-over with an open obligation, written past the use cases", async () => {
    const job = await nearlyDone("certificate");
    const direct = asApplication(job, (tx) =>
      tx.$executeRawUnsafe(
        `insert into hand_over (id, workshop_id, job_id, odometer_km, received_by, at)
         values ('${newId()}', '${job.workshopId}', '${job.jobId}', 24400, 'Somebody', now())`,
      ),
    );
    await expect(direct).rejects.toThrow("open_obligation");
  });

  test("refuses a handed-over status without a hand-over", async () => {
    const job = await nearlyDone("certificate");
    const direct = asApplication(job, (tx) =>
      tx.$executeRawUnsafe(`update job set status = 'handed_over' where id = '${job.jobId}'`),
    );
    await expect(direct).rejects.toThrow("handed_over_by_hand_over");
  });

  test("keeps evidence and hand-overs as they were written", async () => {
    const job = await nearlyDone("nothing");
    await trial.done("desk", handOver, await given(job));
    for (const table of ["evidence", "hand_over", "goods_in"])
      await expect(
        asApplication(job, (tx) => tx.$executeRawUnsafe(`delete from ${table}`)),
      ).rejects.toThrow();
  });
});

describe("goods-in, stopping, finding", () => {
  test("an incomplete count says what is missing, and every count stays on record", async () => {
    const job = await acceptedJob(trial, { goods: false });
    const refusal = await trial.refused("technician", countGoodsIn, {
      jobId: job.jobId,
      complete: false,
      missing: "",
    });
    expect(refusal.code).toBe("goods-missing-not-said");
    await trial.done("technician", countGoodsIn, {
      jobId: job.jobId,
      complete: false,
      missing: "Crank bolt",
    });
    await trial.done("manager", countGoodsIn, { jobId: job.jobId, complete: true, missing: "" });
    const { goodsIn, kit } = await trial.done("desk", readJob, { jobId: job.jobId });
    expect(goodsIn.map(({ complete, missing }) => [complete, missing])).toEqual([
      [true, ""],
      [false, "Crank bolt"],
    ]);
    expect(kit.map(({ code }) => code)).toContain("blower-24-92");
    expect(kit.map(({ code }) => code)).not.toContain("pre-build-inspection");
  });

  test("the desk does not count parts, and nobody counts for a stopped job", async () => {
    const job = await acceptedJob(trial, { goods: false });
    const input = { jobId: job.jobId, complete: true, missing: "" };
    expect((await trial.refused("desk", countGoodsIn, input)).code).toBe("not-allowed");
    expect((await trial.refused("manager", stopJob, { jobId: job.jobId, reason: "no" })).code).toBe(
      "stop-reason",
    );
    await trial.done("manager", stopJob, { jobId: job.jobId, reason: "Cylinder 3 leaks, customer withdrew" });
    expect((await trial.refused("manager", countGoodsIn, input)).code).toBe("goods-closed");
  });

  test("a job is found by number, plate and customer, and never by another workshop", async () => {
    const job = await acceptedJob(trial);
    for (const search of [String(job.number), job.plate]) {
      const { jobs } = await trial.done("technician", listJobs, { search });
      expect(jobs.map(({ number }) => number)).toContain(job.number);
    }
    const foreign = await trial.done("gulfOwner", listJobs, { search: job.plate });
    expect(foreign.jobs).toEqual([]);
  });

  test("what happened to a job names its faults and its payments in words", async () => {
    const job = await acceptedJob(trial, { deposit: false });
    await inWork(job);
    const { faultId } = await trial.done("technician", raiseFault, {
      jobId: job.jobId,
      sentence: "Weeping axle seal on the left",
    });
    await trial.done("manager", clearFault, { faultId, because: "Seal renewed, dry after the road test" });
    await trial.done("desk", recordPayment, {
      quoteId: job.quoteId,
      kind: "deposit",
      amount: "16000",
      method: "transfer",
      receivedOn: "2026-11-25",
    });
    const { timeline } = await trial.done("manager", readJob, { jobId: job.jobId });
    const sentences = timeline.map(({ sentence }) => sentence);
    expect(sentences).toContain("Fault raised: Weeping axle seal on the left");
    expect(sentences).toContain("Fault settled: Seal renewed, dry after the road test");
    expect(sentences).toContain("Deposit received: $16,000.00.");
  });

  test("a job moves only as the table of states allows", async () => {
    const job = await acceptedJob(trial);
    const moved = await trial.database.inWorkshop(job.workshopId, (tx) =>
      moveJob({ tx, now: demoNow, audit: () => {} }, job.jobId, "inWork"),
    );
    expect(moved).toMatchObject({ ok: false, refusal: { code: "job-cannot-move" } });
  });
});
