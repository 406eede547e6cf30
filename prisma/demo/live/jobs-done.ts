import { addDynoSession, addVerdict } from "../dyno-rows";
import { packageItems, packagePromise } from "../package-items";
import { addEvidence } from "../work-rows";
import type { LiveDay } from "./live-day";
import { addLiveJob } from "./live-job";

/** Finished, and still here: one waits for its certificate, one for money, one for its owner. */
export function addJobsDone(day: LiveDay): void {
  certificateMissing(day);
  unpaid(day);
  ready(day);
}

function certificateMissing(day: LiveDay): void {
  const { staff, at } = day;
  const tilda = staff.person("tilda");
  const { build, job, baseline } = addLiveJob(day, {
    enquiry: {
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
    },
    inspected: { at: at(-58, "10:20"), measuredAt: at(-58, "14:00") },
    quoted: { issued: at(-57, "13:45"), accepted: at(-51, "17:30"), depositPaid: at(-50, "09:25") },
    status: "doneNotForRoad",
    startedAt: at(-14, "07:50"),
    finishedAt: at(-7, "15:10"),
    countedAt: at(-18, "10:00"),
    checkedInAt: at(-14, "07:40"),
    by: "joss",
    card: {
      share: 1,
      during: [-14, -13, -12, -7].map((days) => ({ from: at(days, "08:00"), to: at(days, "14:30") })),
    },
    costs: [
      { kind: "parts", what: "Parts as invoiced", minor: 1_004_200 },
      { kind: "dyno", what: "Dyno with operator, 7.9 h", minor: 75_050 },
    ],
  });
  if (!baseline) throw new Error("a promise is proven against a baseline");
  const proof = addDynoSession(day, {
    build,
    job,
    kind: "proof",
    figures: { model: "ridgewold-57", peakKw: 317, peakNm: 588, boostKPa: 32 },
    operatorId: tilda,
    at: at(-7, "11:20"),
  });
  const by = { personId: tilda, at: at(-7, "11:45") };
  addVerdict(day, job, { baseline, proof }, by, packagePromise("long-haul-19"));
}

function unpaid(day: LiveDay): void {
  const { at } = day;
  addLiveJob(day, {
    enquiry: {
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
    },
    quoted: { issued: at(-26, "10:00"), accepted: at(-24, "12:15"), depositPaid: at(-23, "09:10") },
    status: "doneUnpaid",
    startedAt: at(-3, "08:10"),
    finishedAt: at(-3, "10:40"),
    countedAt: at(-9, "14:20"),
    checkedInAt: at(-3, "08:00"),
    by: "joss",
    clocked: [{ operationCode: "fit-cat-back", from: at(-3, "08:12"), to: at(-3, "10:35") }],
    card: { share: 1, during: [{ from: at(-3, "08:15"), to: at(-3, "10:30") }] },
    costs: [{ kind: "parts", what: "Parts as invoiced", minor: 150_000 }],
  });
}

function ready(day: LiveDay): void {
  const { staff, at } = day;
  const { job } = addLiveJob(day, {
    enquiry: {
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
    },
    quoted: {
      issued: at(-24, "16:00"),
      accepted: at(-21, "08:20"),
      depositPaid: at(-20, "09:00"),
      allPaid: at(-1, "16:20"),
    },
    status: "ready",
    startedAt: at(-4, "07:50"),
    finishedAt: at(-4, "15:20"),
    countedAt: at(-8, "13:10"),
    checkedInAt: at(-4, "07:40"),
    by: "joss",
    clocked: [
      { operationCode: "fit-brake-controller", from: at(-4, "07:52"), to: at(-4, "11:50") },
      { operationCode: "fit-gearbox-cooler", from: at(-4, "12:32"), to: at(-4, "15:15") },
    ],
    card: { share: 1, during: [{ from: at(-4, "07:55"), to: at(-4, "15:10") }] },
    costs: [{ kind: "parts", what: "Parts as invoiced", minor: 88_500 }],
  });
  addEvidence(day, job, { at: at(-4, "15:30"), personId: staff.person("noor") });
}
