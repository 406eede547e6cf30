import type { DemoJob } from "../job-rows";
import { packageItems } from "../package-items";
import { addBooking } from "../work-rows";
import type { LiveDay } from "./live-day";
import { addLiveJob } from "./live-job";

/** On the floor now: one vehicle apart, one on its new wheels. */
export function addJobsInWork(day: LiveDay): void {
  blowerHalfWay(day);
  liftNearlyDone(day);
}

function blowerHalfWay(day: LiveDay): void {
  const { at } = day;
  const { job } = addLiveJob(day, {
    enquiry: {
      name: "L. Marchetti",
      phone: "0491 571 491",
      model: "ridgewold-57",
      plate: "7SV 5NB",
      odometerKm: 28_610,
      uses: ["towing", "touring"],
      goal: "Keep pulling on the long grade with the boat on, at 43 °C.",
      packageCode: "long-grade-24",
      itemCodes: packageItems("long-grade-24"),
      at: at(-47, "10:40"),
    },
    inspected: { at: at(-41, "11:00"), measuredAt: at(-41, "14:15") },
    quoted: {
      issued: at(-40, "09:20"),
      accepted: at(-36, "18:55"),
      depositPaid: at(-35, "10:05"),
      discountPct: 2,
    },
    status: "inWork",
    startedAt: at(-2, "07:40"),
    countedAt: at(-6, "13:00"),
    checkedInAt: at(-2, "07:35"),
    by: "tilda",
    clocked: [
      { operationCode: "front-end", from: at(-2, "07:42"), to: at(-2, "11:58") },
      { operationCode: "intake", from: at(-2, "12:33"), to: at(-2, "15:57") },
      { operationCode: "fit-hp-pump", from: at(-1, "07:36"), to: at(-1, "11:55") },
      { operationCode: "fit-blower-24", from: at(-1, "12:31"), to: at(-1, "15:50") },
    ],
    card: {
      share: 0.33,
      during: [
        { from: at(-2, "07:45"), to: at(-2, "12:00") },
        { from: at(-1, "10:40"), to: at(-1, "15:45") },
      ],
    },
  });
  bookBlower(day, job);
}

/** A vehicle that is apart keeps its hoist, overnight too; calibration and proof follow tomorrow. */
function bookBlower(day: LiveDay, job: DemoJob): void {
  const { at } = day;
  const madeAt = at(-9, "11:30");
  const apart = "Blower, cooler and fuel pump: apart";
  const onHoist = { resource: "Hoist 1", work: apart, from: at(-2, "07:30"), to: at(1, "12:00") };
  addBooking(day, job, { ...onHoist, madeAt });
  const fitting = { resource: "Tilda Brennock", work: "Blower, cooler and fuel pump", madeAt };
  for (const days of [-2, -1, 0]) {
    addBooking(day, job, { ...fitting, from: at(days, "07:30"), to: at(days, "16:00") });
  }
  const calibrating = { work: "Calibration and proof", from: at(1, "12:30"), to: at(1, "16:00"), madeAt };
  addBooking(day, job, { ...calibrating, resource: "Hub dyno" });
  addBooking(day, job, { ...calibrating, resource: "Tilda Brennock" });
}

function liftNearlyDone(day: LiveDay): void {
  const { workshop, staff, at } = day;
  const { job, stepsDone } = addLiveJob(day, {
    enquiry: {
      name: "P. Lindgarth",
      phone: "0491 571 804",
      model: "ridgewold-57",
      plate: "1TK 8HC",
      odometerKm: 15_330,
      uses: ["touring"],
      goal: "Clear the ruts on the way to the block, with speedometer and camera right afterwards.",
      packageCode: "stand-tall",
      itemCodes: packageItems("stand-tall"),
      at: at(-22, "09:10"),
    },
    quoted: { issued: at(-21, "14:30"), accepted: at(-18, "07:50"), depositPaid: at(-17, "11:00") },
    status: "inWork",
    startedAt: at(-1, "07:45"),
    countedAt: at(-5, "09:40"),
    checkedInAt: at(-1, "07:40"),
    by: "joss",
    clocked: [
      { operationCode: "fit-lift", from: at(-1, "07:48"), to: at(-1, "11:57") },
      { operationCode: "fit-five-tyres", from: at(-1, "12:35"), to: at(-1, "15:40") },
    ],
    card: { share: 0.6, during: [{ from: at(-1, "07:50"), to: at(-1, "15:30") }] },
  });
  const madeAt = at(-11, "10:20");
  const work = "Lift, tyres, alignment";
  addBooking(day, job, { resource: "Hoist 3", work, from: at(-1, "07:30"), to: at(0, "16:00"), madeAt });
  addBooking(day, job, { resource: "Joss Varga", work, from: at(-1, "07:30"), to: at(-1, "16:00"), madeAt });
  addBooking(day, job, { resource: "Joss Varga", work, from: at(0, "12:30"), to: at(0, "16:00"), madeAt });
  workshop.rows.add("fault", {
    id: workshop.newId(at(-1, "15:35")),
    workshopId: workshop.id,
    jobId: job.id,
    stepId: job.steps[stepsDone - 1]?.id ?? null,
    sentence:
      "Left rear brake hose is chafed where the spring sits; it should be renewed before it goes back on the road.",
    raisedById: staff.person("joss"),
    raisedAt: at(-1, "15:35"),
    clearedAt: null,
    clearedBecause: "",
  });
}
