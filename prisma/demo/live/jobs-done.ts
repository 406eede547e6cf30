import { standardFigures } from "../dyno-curve";
import { addDynoSession, addVerdict } from "../dyno-rows";
import { addJob, type DemoJob } from "../job-rows";
import { packageItems, packagePromise } from "../package-items";
import {
  addCheckIn,
  addClock,
  addCost,
  addEvidence,
  addGoodsIn,
  addInspection,
  addStepEntries,
  type Stretch,
} from "../work-rows";
import { addAcceptedQuote, addEnquiry, type LiveDay } from "./live-day";

/** Finished, and still here: one waits for its certificate, one for money, one for its owner. */
export function addJobsDone(day: LiveDay): void {
  certificateMissing(day);
  unpaid(day);
  ready(day);
}

function certificateMissing(day: LiveDay): void {
  const { workshop, staff, at } = day;
  const tilda = staff.person("tilda");
  const build = addEnquiry(day, {
    name: "K. Oyelowo-Reed",
    phone: "0491 572 549",
    model: "ridgewold-57",
    plate: "4NG 2PB",
    odometerKm: 35_870,
    uses: ["towing"],
    goal: "Hold 100 km/h with the caravan on.",
    packageCode: "long-haul-19",
    itemCodes: packageItems("long-haul-19"),
    at: at(-64, "09:30"),
  });
  addInspection(day, build, { at: at(-58, "10:20"), doneById: tilda });
  const quote = addAcceptedQuote(day, build, {
    issued: at(-57, "13:45"),
    accepted: at(-51, "17:30"),
    depositPaid: at(-50, "09:25"),
  });
  const job = addJob(workshop, quote, {
    status: "doneNotForRoad",
    at: at(-51, "17:30"),
    startedAt: at(-14, "07:50"),
    finishedAt: at(-7, "15:10"),
  });
  const baseline = addDynoSession(day, {
    build,
    job,
    kind: "baseline",
    figures: standardFigures("ridgewold-57"),
    operatorId: tilda,
    at: at(-58, "14:00"),
  });
  addGoodsIn(day, job, { at: at(-18, "10:00"), countedById: staff.person("joss") });
  addCheckIn(day, job, at(-14, "07:40"), staff.person("noor"));
  const proof = addDynoSession(day, {
    build,
    job,
    kind: "proof",
    figures: { model: "ridgewold-57", peakKw: 317, peakNm: 588, boostKPa: 32 },
    operatorId: tilda,
    at: at(-7, "11:20"),
  });
  addVerdict(
    day,
    job,
    { baseline, proof },
    { personId: tilda, at: at(-7, "11:45") },
    packagePromise("long-haul-19"),
  );
  allStepsDone(
    day,
    job,
    [-14, -13, -12, -7].map((days) => ({ from: at(days, "08:00"), to: at(days, "14:30") })),
  );
  addCost(day, job, "parts", "Parts as invoiced", 1_004_200, at(-7, "15:05"));
  addCost(day, job, "dyno", "Dyno with operator, 7.9 h", 75_050, at(-7, "15:05"));
}

function unpaid(day: LiveDay): void {
  const { workshop, staff, at } = day;
  const joss = staff.person("joss");
  const build = addEnquiry(day, {
    name: "B. Sandell",
    phone: "0491 572 665",
    model: "ridgewold-57",
    plate: "6VC 7JT",
    odometerKm: 52_040,
    uses: ["touring"],
    goal: "A deeper note that does not drone.",
    packageCode: null,
    itemCodes: ["cat-back-exhaust"],
    at: at(-27, "15:30"),
  });
  const quote = addAcceptedQuote(day, build, {
    issued: at(-26, "10:00"),
    accepted: at(-24, "12:15"),
    depositPaid: at(-23, "09:10"),
  });
  const job = addJob(workshop, quote, {
    status: "doneUnpaid",
    at: at(-24, "12:15"),
    startedAt: at(-3, "08:10"),
    finishedAt: at(-3, "10:40"),
  });
  addGoodsIn(day, job, { at: at(-9, "14:20"), countedById: joss });
  addCheckIn(day, job, at(-3, "08:00"), staff.person("noor"));
  addClock(day, job, {
    personId: joss,
    operationCode: "fit-cat-back",
    from: at(-3, "08:12"),
    to: at(-3, "10:35"),
  });
  allStepsDone(day, job, [{ from: at(-3, "08:15"), to: at(-3, "10:30") }]);
  addCost(day, job, "parts", "Parts as invoiced", 150_000, at(-3, "10:40"));
}

function ready(day: LiveDay): void {
  const { workshop, staff, at } = day;
  const joss = staff.person("joss");
  const build = addEnquiry(day, {
    name: "F. Kessell",
    phone: "0491 572 983",
    model: "vale-30td",
    plate: "2HM 6ZD",
    odometerKm: 43_900,
    uses: ["towing", "touring"],
    goal: "Tow a 2.9 t trailer legally and know that it stops.",
    packageCode: "tow-ready",
    itemCodes: packageItems("tow-ready"),
    at: at(-25, "11:20"),
  });
  const quote = addAcceptedQuote(day, build, {
    issued: at(-24, "16:00"),
    accepted: at(-21, "08:20"),
    depositPaid: at(-20, "09:00"),
    allPaid: at(-1, "16:20"),
  });
  const job = addJob(workshop, quote, {
    status: "ready",
    at: at(-21, "08:20"),
    startedAt: at(-4, "07:50"),
    finishedAt: at(-4, "15:20"),
  });
  addGoodsIn(day, job, { at: at(-8, "13:10"), countedById: joss });
  addCheckIn(day, job, at(-4, "07:40"), staff.person("noor"));
  addClock(day, job, {
    personId: joss,
    operationCode: "fit-brake-controller",
    from: at(-4, "07:52"),
    to: at(-4, "11:50"),
  });
  addClock(day, job, {
    personId: joss,
    operationCode: "fit-gearbox-cooler",
    from: at(-4, "12:32"),
    to: at(-4, "15:15"),
  });
  allStepsDone(day, job, [{ from: at(-4, "07:55"), to: at(-4, "15:10") }]);
  addCost(day, job, "parts", "Parts as invoiced", 88_500, at(-4, "15:20"));
  addEvidence(day, job, { at: at(-4, "15:30"), personId: staff.person("noor") });
}

function allStepsDone(day: LiveDay, job: DemoJob, during: readonly Stretch[]): void {
  addStepEntries(day, job, {
    count: job.steps.length,
    during,
    personId: day.staff.person("joss"),
    secondPersonId: day.staff.person("tilda"),
  });
}
