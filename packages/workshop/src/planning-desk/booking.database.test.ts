import { describe, expect, test } from "vitest";
import { perform } from "../core/perform";
import { jobGate } from "../jobs/gate";
import { readJob } from "../jobs/read-job";
import { acceptedJob } from "../testing/accepted-job";
import { demoWorkshop } from "../testing/demo-workshop";
import { bookJob } from "./book";
import { cancelBooking, moveBooking } from "./change-booking";
import { readPlan } from "./read-plan";

const trial = demoWorkshop();

async function resource(name: string): Promise<string> {
  const [row] = await trial.sql(
    "select r.id from resource r join workshop w on w.id = r.workshop_id where r.name = $1 and w.name like 'Saltbush%'",
    [name],
  );
  return String(row?.id);
}

type Block = { resourceId: string; startsAt: string; endsAt: string; work: string };

async function block(
  name: string,
  startsAt: string,
  endsAt: string,
  work = "Fit the blower",
): Promise<Block> {
  return { resourceId: await resource(name), startsAt, endsAt, work };
}

const pointsOf = (refusal: { data?: unknown }) =>
  (refusal.data as { points: readonly string[] }).points.join("\n"); // Refusals of these use cases list points.

describe("the booking gate", () => {
  test("tells every unmet point at once when the manager books too early", async () => {
    const job = await acceptedJob(trial, { deposit: false, inspection: "none", goods: false });
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 1", "2026-12-01T08:00", "2026-12-01T16:00")],
    });
    expect(refusal.code).toBe("gate-shut");
    expect(pointsOf(refusal)).toContain("Deposit not received: $0.00 of $16,000.00.");
    expect(pointsOf(refusal)).toContain("no pre-build inspection yet");
    expect(pointsOf(refusal)).toContain("not counted yet");
    expect((await trial.done("manager", readJob, { jobId: job.jobId })).status).toBe("waiting");
  });

  test("is met when deposit, inspection, parts and papers are there, and the booking moves the job on", async () => {
    const job = await acceptedJob(trial);
    const gate = await trial.done("desk", jobGate, { jobId: job.jobId });
    expect(gate.points.filter(({ met }) => !met).map(({ point }) => point)).toEqual(["resources"]);
    await trial.done("manager", bookJob, {
      jobId: job.jobId,
      blocks: [
        await block("Hoist 1", "2027-01-04T08:00", "2027-01-08T16:00"),
        await block("Tilda Brennock", "2027-01-04T08:00", "2027-01-08T16:00"),
        await block("Hub dyno", "2027-01-08T09:00", "2027-01-08T15:00", "Calibrate on the dyno"),
      ],
    });
    const read = await trial.done("desk", readJob, { jobId: job.jobId });
    expect(read.status).toBe("booked");
    expect(read.bookings).toHaveLength(3);
    expect(read.gate.every(({ met }) => met)).toBe(true);
  });

  test("asks that the inspection still stands on the day the work starts, not only today", async () => {
    const job = await acceptedJob(trial);
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 2", "2027-02-01T08:00", "2027-02-01T16:00")],
    });
    expect(pointsOf(refusal)).toContain("no longer speaks for the vehicle");
  });

  test("does not count an inspection after more kilometres than it is good for", async () => {
    const job = await acceptedJob(trial);
    await trial.sql("update vehicle set odometer_km = odometer_km + 3001 where id = $1", [job.vehicleId]);
    const gate = await trial.done("manager", jobGate, { jobId: job.jobId });
    expect(gate.points.find(({ point }) => point === "inspection")).toMatchObject({
      met: false,
      safety: false,
    });
  });

  test("checks the accepted selection again on the vehicle as it is now", async () => {
    const job = await acceptedJob(trial);
    await trial.sql("update vehicle set fuel_octane = 91 where id = $1", [job.vehicleId]);
    const gate = await trial.done("manager", jobGate, { jobId: job.jobId });
    expect(gate.points.find(({ point }) => point === "prerequisite:octane-98")).toMatchObject({
      met: false,
      safety: true,
    });
  });

  test("is shut when the accepted version was superseded", async () => {
    const job = await acceptedJob(trial);
    await trial.sql("update quote_version set status = 'superseded' where id = $1", [job.versionId]);
    const gate = await trial.done("manager", jobGate, { jobId: job.jobId });
    expect(gate.points.find(({ point }) => point === "acceptance")).toMatchObject({ met: false });
  });

  test("asks no inspection for a job of trim only", async () => {
    const job = await acceptedJob(trial, { items: ["dark-trim"], inspection: "none" });
    const gate = await trial.done("manager", jobGate, { jobId: job.jobId });
    expect(gate.points.find(({ point }) => point === "inspection")?.met).toBe(true);
  });

  test("says that obligations are not laid out when they are not", async () => {
    const job = await acceptedJob(trial);
    await trial.sql("delete from obligation where job_id = $1", [job.jobId]);
    const gate = await trial.done("manager", jobGate, { jobId: job.jobId });
    expect(gate.points.find(({ point }) => point === "compliance")).toMatchObject({ met: false });
  });
});

describe("an override", () => {
  const late = "Insurer pays the deposit on Monday, confirmed by telephone";

  test("lets one point pass, with its reason and its manager on record", async () => {
    const job = await acceptedJob(trial, { deposit: false });
    await trial.done("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 3", "2026-12-01T08:00", "2026-12-01T16:00")],
      overrides: [{ point: "deposit", reason: late }],
    });
    const gate = await trial.done("desk", jobGate, { jobId: job.jobId });
    expect(gate.points.find(({ point }) => point === "deposit")).toMatchObject({
      met: false,
      overridden: { by: "Marek Oduya", reason: late },
    });
  });

  test("needs a reason of ten characters", async () => {
    const job = await acceptedJob(trial, { deposit: false });
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 3", "2026-12-02T08:00", "2026-12-02T16:00")],
      overrides: [{ point: "deposit", reason: "hurry" }],
    });
    expect(refusal.code).toBe("override-needs-reason");
  });

  test("never passes a failed inspection or a safety rule", async () => {
    const failed = await acceptedJob(trial, { inspection: "failed" });
    const blocks = [await block("Hoist 3", "2026-12-03T08:00", "2026-12-03T16:00")];
    const refusal = await trial.refused("manager", bookJob, {
      jobId: failed.jobId,
      blocks,
      overrides: [{ point: "inspection", reason: "The customer insists on it" }],
    });
    expect(refusal.code).toBe("override-is-safety");
    const wrongFuel = await acceptedJob(trial);
    await trial.sql("update vehicle set fuel_octane = 95 where id = $1", [wrongFuel.vehicleId]);
    const fuel = await trial.refused("manager", bookJob, {
      jobId: wrongFuel.jobId,
      blocks,
      overrides: [{ point: "prerequisite:octane-98", reason: "He promises to buy 98" }],
    });
    expect(fuel.code).toBe("override-is-safety");
  });

  test("names a point that is really open", async () => {
    const job = await acceptedJob(trial);
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 3", "2026-12-03T08:00", "2026-12-03T16:00")],
      overrides: [{ point: "deposit", reason: "There is nothing to override here" }],
    });
    expect(refusal.code).toBe("override-unknown");
  });
});

describe("times that cannot be", () => {
  const tries: readonly (readonly [string, string, string, string])[] = [
    ["in the past", "2026-11-24T08:00", "2026-11-24T16:00", "in the past"],
    ["ending before they start", "2026-12-07T16:00", "2026-12-07T08:00", "ends before it starts"],
    ["left out when the clocks go forward", "2027-10-03T02:30", "2027-10-03T06:00", "does not exist"],
    ["shown twice when the clocks go back", "2027-04-04T02:30", "2027-04-04T06:00", "comes twice"],
    ["that are none", "soon", "2026-12-07T08:00", "is not a time"],
    ["of two months", "2026-12-07T08:00", "2027-02-07T08:00", "longer than 31 days"],
  ];
  test.each(tries)("%s are refused with a sentence", async (_, startsAt, endsAt, words) => {
    const job = await acceptedJob(trial);
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 1", startsAt, endsAt)],
    });
    expect(pointsOf(refusal)).toContain(words);
  });

  test("outside the usual hours are booked with a warning", async () => {
    const job = await acceptedJob(trial);
    const booked = await trial.done("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 1", "2026-12-12T08:00", "2026-12-12T12:00")],
    });
    expect(booked.warnings.join()).toContain("outside the usual hours");
  });

  test("none at all is told so", async () => {
    const job = await acceptedJob(trial);
    const refusal = await trial.refused("manager", bookJob, { jobId: job.jobId, blocks: [] });
    expect(refusal.code).toBe("no-blocks");
  });
});

describe("resources that must not be used", () => {
  test("a hoist past its inspection date", async () => {
    await trial.sql("update resource set inspected_until = '2026-12-13' where name = 'Hoist 2'");
    const job = await acceptedJob(trial);
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 2", "2026-12-14T08:00", "2026-12-14T16:00")],
    });
    expect(pointsOf(refusal)).toContain("Hoist 2: its inspection runs out on 13 Dec 2026");
    await trial.sql("update resource set inspected_until = '2027-12-13' where name = 'Hoist 2'");
  });

  test("a hoist that is not rated for the vehicle with its build", async () => {
    await trial.sql("update resource set max_mass_kg = 2700 where name = 'Hoist 2'");
    const job = await acceptedJob(trial);
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 2", "2026-12-14T08:00", "2026-12-14T16:00")],
    });
    // 2,640 kg at the kerb and the blower kit's 58 kg alone would be 2,698: it is the rest that is too much.
    expect(pointsOf(refusal)).toMatch(/Hoist 2: the vehicle weighs about 27\d\d kg/);
    await trial.sql("update resource set max_mass_kg = 4000 where name = 'Hoist 2'");
  });

  test("the dyno without an operator for all of its time", async () => {
    const job = await acceptedJob(trial);
    const dyno = await block("Hub dyno", "2026-12-14T09:00", "2026-12-14T15:00", "Proof on the dyno");
    const alone = await trial.refused("manager", bookJob, { jobId: job.jobId, blocks: [dyno] });
    expect(pointsOf(alone)).toContain("no dyno operator is booked");
    const joss = await block("Joss Varga", "2026-12-14T08:00", "2026-12-14T16:00", "Help");
    const wrong = await trial.refused("manager", bookJob, { jobId: job.jobId, blocks: [dyno, joss] });
    expect(pointsOf(wrong)).toContain("no dyno operator is booked");
    const part = await block("Tilda Brennock", "2026-12-14T10:00", "2026-12-14T15:00", "Proof on the dyno");
    const late = await trial.refused("manager", bookJob, { jobId: job.jobId, blocks: [dyno, part] });
    expect(pointsOf(late)).toContain("no dyno operator is booked");
  });

  test("a person without the skill that the work asks for", async () => {
    const job = await acceptedJob(trial);
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Joss Varga", "2026-12-14T08:00", "2026-12-14T16:00", "Calibrate on the dyno")],
    });
    expect(pointsOf(refusal)).toContain("Joss Varga is not a calibrator");
  });

  test("one resource twice at the same time in one request", async () => {
    const job = await acceptedJob(trial);
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [
        await block("Hoist 1", "2026-12-14T08:00", "2026-12-14T12:00"),
        await block("Hoist 1", "2026-12-14T11:00", "2026-12-14T13:00"),
      ],
    });
    expect(pointsOf(refusal)).toContain("entered twice");
  });
});

describe("two bookings on one resource at one time", () => {
  test("the second is told who holds it, with job, plate and time", async () => {
    const first = await acceptedJob(trial);
    const second = await acceptedJob(trial);
    const blocks = [await block("Hoist 1", "2026-12-15T08:00", "2026-12-15T16:00")];
    await trial.done("manager", bookJob, { jobId: first.jobId, blocks });
    const refusal = await trial.refused("manager", bookJob, { jobId: second.jobId, blocks });
    expect(pointsOf(refusal)).toContain(
      `Hoist 1 is taken Tue 15 Dec, 08:00 to 16:00 by job ${first.number} (${first.plate}, Fit the blower).`,
    );
  });

  test("one may start when the other ends", async () => {
    const first = await acceptedJob(trial);
    await trial.done("manager", bookJob, {
      jobId: first.jobId,
      blocks: [await block("Hoist 1", "2026-12-16T08:00", "2026-12-16T12:00")],
    });
    await trial.done("manager", bookJob, {
      jobId: (await acceptedJob(trial)).jobId,
      blocks: [await block("Hoist 1", "2026-12-16T12:00", "2026-12-16T16:00")],
    });
  });

  test("of twenty at once exactly one wins, and the others are told by whom", async () => {
    const jobs = [];
    for (let index = 0; index < 20; index += 1) jobs.push(await acceptedJob(trial));
    const blocks = [await block("Hoist 3", "2026-12-17T08:00", "2026-12-17T16:00")];
    const manager = await trial.as("manager");
    const results = await Promise.all(jobs.map(({ jobId }) => perform(manager, bookJob, { jobId, blocks })));
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
    for (const result of results) {
      if (result.ok) continue;
      const told = `${result.refusal.sentence} ${JSON.stringify(result.refusal.data)}`;
      expect(told).toContain("Hoist 3 is taken Thu 17 Dec, 08:00 to 16:00 by job");
    }
    const [row] = await trial.sql(
      "select count(*)::int as n from booking where starts_at = '2026-12-16T21:30Z' and cancelled_at is null",
    );
    expect(row?.n).toBe(1);
  });

  test("the database itself refuses it, whoever asks", async () => {
    const job = await acceptedJob(trial);
    await trial.done("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 1", "2026-12-18T08:00", "2026-12-18T16:00")],
    });
    const again = trial.sql(
      `insert into booking (id, workshop_id, job_id, resource_id, work, starts_at, ends_at)
       select gen_random_uuid(), workshop_id, job_id, resource_id, work, starts_at + interval '1 hour', ends_at
       from booking where job_id = $1`,
      [job.jobId],
    );
    await expect(again).rejects.toThrow("no_double_booking");
  });
});

describe("changing a booking", () => {
  async function booked(day: string) {
    const job = await acceptedJob(trial);
    const { bookingIds } = await trial.done("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 2", `${day}T08:00`, `${day}T16:00`)],
    });
    return { ...job, bookingId: String(bookingIds[0]) };
  }

  test("moves it and keeps the old one on record as cancelled", async () => {
    const job = await booked("2026-12-21");
    const moved = await trial.done("manager", moveBooking, {
      bookingId: job.bookingId,
      ...(await block("Hoist 1", "2026-12-22T08:00", "2026-12-22T16:00")),
    });
    const rows = await trial.sql(
      "select id, cancelled_at from booking where job_id = $1 order by created_at, id",
      [job.jobId],
    );
    expect(rows.map(({ id, cancelled_at }) => [id, cancelled_at !== null])).toEqual([
      [job.bookingId, true],
      [moved.bookingId, false],
    ]);
    const { timeline } = await trial.done("desk", readJob, { jobId: job.jobId });
    expect(timeline.map(({ sentence }) => sentence).join("\n")).toContain("Booking moved to Hoist 1");
  });

  test("may stay on its own time when only the work or the end changes", async () => {
    const job = await booked("2026-12-23");
    await trial.done("manager", moveBooking, {
      bookingId: job.bookingId,
      ...(await block("Hoist 2", "2026-12-23T08:00", "2026-12-23T17:00", "Fit blower and cooler")),
    });
  });

  test("onto a taken time is refused, and the booking stays where it was", async () => {
    const holder = await booked("2026-12-28");
    const job = await booked("2026-12-29");
    const refusal = await trial.refused("manager", moveBooking, {
      bookingId: job.bookingId,
      ...(await block("Hoist 2", "2026-12-28T10:00", "2026-12-28T12:00")),
    });
    expect(refusal.sentence).toContain(`by job ${holder.number}`);
    const [row] = await trial.sql("select cancelled_at from booking where id = $1", [job.bookingId]);
    expect(row?.cancelled_at).toBeNull();
  });

  test("that somebody else cancelled a moment ago is told", async () => {
    const job = await booked("2026-12-30");
    await trial.done("manager", cancelBooking, { bookingId: job.bookingId });
    const refusal = await trial.refused("manager", cancelBooking, { bookingId: job.bookingId });
    expect(refusal.code).toBe("booking-stale");
  });

  test("that is over is refused", async () => {
    const job = await booked("2026-12-31");
    const after = new Date("2027-01-10T00:00:00Z");
    const refusal = await trial.refused("manager", cancelBooking, { bookingId: job.bookingId }, after);
    expect(refusal.code).toBe("booking-past");
  });

  test("cancelling the last one lets the job wait again", async () => {
    const job = await booked("2027-01-11");
    await trial.done("manager", cancelBooking, { bookingId: job.bookingId });
    expect((await trial.done("desk", readJob, { jobId: job.jobId })).status).toBe("waiting");
  });

  test("never leaves the dyno without its operator", async () => {
    const job = await acceptedJob(trial);
    await trial.done("manager", bookJob, {
      jobId: job.jobId,
      blocks: [
        await block("Hub dyno", "2027-01-12T09:00", "2027-01-12T15:00", "Proof on the dyno"),
        await block("Tilda Brennock", "2027-01-12T08:00", "2027-01-12T16:00", "Proof on the dyno"),
      ],
    });
    const { bookings } = await trial.done("manager", readJob, { jobId: job.jobId });
    const operator = bookings.find(({ kind }) => kind === "person");
    const refusal = await trial.refused("manager", cancelBooking, { bookingId: operator?.id });
    expect(refusal.code).toBe("dyno-left-alone");
  });
});

describe("who and whose", () => {
  test("desk, technician and owner do not book", async () => {
    const job = await acceptedJob(trial);
    for (const part of ["desk", "technician", "owner"] as const) {
      const refusal = await trial.refused(part, bookJob, { jobId: job.jobId, blocks: [] });
      expect(refusal.code).toBe("not-allowed");
    }
  });

  test("another workshop's job and booking are not found", async () => {
    const job = await acceptedJob(trial);
    expect((await trial.refused("gulfDesk", jobGate, { jobId: job.jobId })).code).toBe("job-not-found");
    expect((await trial.refused("gulfOwner", readJob, { jobId: job.jobId })).code).toBe("job-not-found");
  });

  test("another workshop's hoist is not in the list", async () => {
    const [foreign] = await trial.sql(
      "select r.id from resource r join workshop w on w.id = r.workshop_id where w.name not like 'Saltbush%' limit 1",
    );
    const job = await acceptedJob(trial);
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [
        {
          resourceId: String(foreign?.id),
          startsAt: "2026-12-14T08:00",
          endsAt: "2026-12-14T16:00",
          work: "Fit",
        },
      ],
    });
    expect(pointsOf(refusal)).toContain("not in this workshop");
  });

  test("a stopped job takes no more time", async () => {
    const job = await acceptedJob(trial);
    await trial.sql("update job set status = 'stopped' where id = $1", [job.jobId]);
    const refusal = await trial.refused("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 1", "2026-12-14T08:00", "2026-12-14T16:00")],
    });
    expect(refusal.code).toBe("job-not-bookable");
  });
});

describe("the plan", () => {
  test("shows a day's bookings under their resources, with plate and work", async () => {
    const job = await acceptedJob(trial);
    await trial.done("manager", bookJob, {
      jobId: job.jobId,
      blocks: [await block("Hoist 1", "2027-01-14T08:00", "2027-01-14T16:00")],
    });
    const plan = await trial.done("technician", readPlan, { day: "2027-01-14", span: "day" });
    const hoist = plan.resources.find(({ name }) => name === "Hoist 1");
    expect(hoist?.bookings).toMatchObject([
      { plate: job.plate, work: "Fit the blower", jobNumber: job.number },
    ]);
  });

  test("a week begins on its Monday, and the waiting jobs say what they wait for", async () => {
    await trial.sql("update job set status = 'stopped' where status = 'waiting'");
    const job = await acceptedJob(trial, { deposit: false });
    const plan = await trial.done("manager", readPlan, { day: "2027-01-14", span: "week" });
    expect(plan.days.map(({ date }) => date)).toEqual([
      "2027-01-11",
      "2027-01-12",
      "2027-01-13",
      "2027-01-14",
      "2027-01-15",
      "2027-01-16",
      "2027-01-17",
    ]);
    const waiting = plan.waiting.find(({ id }) => id === job.jobId);
    expect(waiting?.points.map(({ point }) => point)).toEqual(["deposit"]);
  });
});
