import { beforeEach, describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { keepPhoto } from "../files/keep-photo";
import { readFile } from "../paperwork/read-file";
import { UploadedFile } from "../paperwork/uploaded-file";
import { type AcceptedJob, acceptedJob } from "../testing/accepted-job";
import { demoWorkshop } from "../testing/demo-workshop";
import { onePixel } from "../testing/floor-card";
import { checkIn, readCheckIn } from "./check-in";

const trial = demoWorkshop();
let job: AcceptedJob;

beforeEach(async () => {
  job = await acceptedJob(trial);
  await trial.sql("update job set status = 'booked' where id = $1", [job.jobId]);
});

async function arrival(more: Record<string, unknown> = {}) {
  const { notices } = await trial.done("technician", readCheckIn, { jobId: job.jobId });
  return {
    jobId: job.jobId,
    odometerKm: 24_402,
    keys: 2,
    fuelOctane: 98,
    ethanolPct: 6,
    condition: "Scratch on the left rear door.",
    told: notices.map(({ code }) => code),
    ...more,
  };
}

async function refusal(more: Record<string, unknown>) {
  return trial.refused("technician", checkIn, await arrival(more));
}

describe("checking a vehicle in", () => {
  test("records what was told, its condition with photos, odometer, keys and fuel, and moves the job", async () => {
    const file = new UploadedFile("door.png", onePixel);
    const { sha256 } = await trial.done("technician", keepPhoto, { file });
    await trial.done("technician", checkIn, await arrival({ photos: [sha256] }));
    const card = await trial.done("technician", readCheckIn, { jobId: job.jobId });
    expect(card).toMatchObject({
      status: "checkedIn",
      knownOdometerKm: 24_402,
      done: {
        odometerKm: 24_402,
        keys: 2,
        fuelOctane: 98,
        ethanolPct: 6,
        photos: [sha256],
        by: "Tilda Brennock",
      },
    });
    expect(card.done?.told).toEqual(card.notices.map(({ sentence }) => sentence));
    expect(card.done?.told.join(" ")).toContain("stores data of its users");
    const again = await trial.refused("technician", checkIn, await arrival());
    expect(again.code).toBe("already-checked-in");
  });

  test("is done by the front desk too, and by nobody who only owns the place", async () => {
    expect((await trial.refused("owner", checkIn, await arrival())).code).toBe("not-allowed");
    await trial.done("desk", checkIn, await arrival());
  });

  test("waits until everything was said, and lists what was not", async () => {
    const told = (await arrival()).told.filter((code) => code !== "dyno-consent");
    const refused = await refusal({ told });
    expect(refused).toMatchObject({ code: "not-told" });
    expect(JSON.stringify(refused.data)).toContain("run at full load on the dyno");
  });

  test("asks for dyno consent only where there is dyno work", async () => {
    const plain = await acceptedJob(trial, { items: ["oil-service"] });
    const { notices } = await trial.done("technician", readCheckIn, { jobId: plain.jobId });
    expect(notices.map(({ code }) => code)).not.toContain("dyno-consent");
  });

  test("refuses an odometer below the last reading, and says so at the field", async () => {
    const refused = await refusal({ odometerKm: 24_309 });
    expect(refused).toMatchObject({ code: "odometer-below-known", field: "odometerKm" });
    expect(refused.sentence).toContain("24,310 km");
  });

  test("asks for fuel grade and ethanol content of an engine that will be run at full load", async () => {
    expect((await refusal({ fuelOctane: undefined })).code).toBe("fuel-grade-missing");
    expect((await refusal({ ethanolPct: undefined })).code).toBe("ethanol-missing");
    for (const wrong of [{ fuelOctane: 97 }, { ethanolPct: 101 }, { ethanolPct: -1 }])
      expect((await refusal(wrong)).code).toBe("invalid-input");
  });

  test("counts at least one key, and wants the condition in words", async () => {
    expect((await refusal({ keys: 0 })).sentence).toMatch(/At least one key/);
    expect((await refusal({ condition: " " })).sentence).toMatch(/Walk round/);
    expect((await refusal({ odometerKm: 24_310.5 })).sentence).toMatch(/whole kilometres/);
  });

  test("takes no photo that never arrived", async () => {
    expect((await refusal({ photos: ["a".repeat(64)] })).code).toBe("photo-not-kept");
  });

  test("waits for the booking", async () => {
    const told = (await arrival()).told;
    await trial.sql("update job set status = 'waiting' where id = $1", [job.jobId]);
    expect((await refusal({ told })).code).toBe("not-booked");
  });

  test("says that a lapsed inspection is renewed", async () => {
    expect(await trial.done("technician", checkIn, await arrival({ odometerKm: 27_311 }))).toMatchObject({
      renewInspection: expect.stringMatching(/has lapsed.*Renew it/),
    });
  });

  test("says nothing of an inspection that stands", async () => {
    expect(await trial.done("technician", checkIn, await arrival())).toMatchObject({ renewInspection: null });
  });

  test("of another workshop's job finds nothing", async () => {
    const input = await arrival();
    expect((await trial.refused("gulfDesk", checkIn, input)).code).toBe("job-not-found");
    expect((await trial.refused("gulfDesk", readCheckIn, { jobId: job.jobId })).code).toBe("job-not-found");
    expect((await trial.refused("desk", checkIn, { ...input, jobId: newId() })).code).toBe("job-not-found");
  });
});

describe("a photo", () => {
  test("is known by its bytes, whatever it is called", async () => {
    const kept = await trial.done("desk", keepPhoto, { file: new UploadedFile("x.exe", onePixel) });
    expect(kept.mediaType).toBe("image/png");
    const read = await trial.done("desk", readFile, { sha256: kept.sha256 });
    expect(Buffer.from(read.bytes).equals(onePixel)).toBe(true);
  });

  test("that is no image, or a document, or too large, is refused in a sentence", async () => {
    const kept = (name: string, bytes: Uint8Array) =>
      trial.refused("technician", keepPhoto, { file: new UploadedFile(name, bytes) });
    expect((await kept("p.jpg", new TextEncoder().encode("<script>alert(1)</script>"))).code).toBe(
      "not-an-image",
    );
    expect((await kept("p.jpg", new TextEncoder().encode("%PDF-1.7\n%%EOF"))).code).toBe("not-an-image");
    expect((await kept("p.jpg", new Uint8Array())).code).toBe("not-an-image");
    const large = new Uint8Array(15 * 1024 * 1024 + 1);
    large.set(onePixel);
    expect((await kept("p.png", large)).code).toBe("photo-too-large");
  });

  test("of another workshop is not found, though its address is known", async () => {
    const { sha256 } = await trial.done("desk", keepPhoto, { file: new UploadedFile("p.png", onePixel) });
    expect((await trial.refused("gulfDesk", readFile, { sha256 })).code).toBe("file-not-found");
  });
});
