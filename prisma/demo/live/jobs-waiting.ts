import { standardFigures } from "../dyno-curve";
import { addDynoSession } from "../dyno-rows";
import { addJob } from "../job-rows";
import { packageItems } from "../package-items";
import type { DemoBuild } from "../quote-rows";
import { addBooking, addGoodsIn, addInspection } from "../work-rows";
import { addAcceptedQuote, addEnquiry, type LiveDay } from "./live-day";

/** Accepted, not begun: one without its deposit, one without all its parts, two with a place on the plan. */
export function addJobsWaiting(day: LiveDay): void {
  depositMissing(day);
  partsMissing(day);
  bookedToday(day);
  bookedTomorrow(day);
}

function depositMissing(day: LiveDay): void {
  const { workshop, at, date } = day;
  const build = addEnquiry(day, {
    name: "M. Brandt",
    phone: "0491 570 110",
    model: "ridgewold-57",
    plate: "3FR 6TX",
    odometerKm: 31_200,
    uses: ["towing", "street"],
    goal: "Overtake with the horse float on; ready before the long weekend.",
    packageCode: "long-haul-19",
    itemCodes: packageItems("long-haul-19"),
    at: at(-12, "10:15"),
    wantedBy: date(24),
  });
  inspected(day, build, -8);
  const quote = addAcceptedQuote(day, build, { issued: at(-7, "09:40"), accepted: at(-3, "19:25") });
  addJob(workshop, quote, { status: "waiting", at: at(-3, "19:25") });
}

function partsMissing(day: LiveDay): void {
  const { workshop, staff, at } = day;
  const build = addEnquiry(day, {
    name: "S. Duvall",
    phone: "0491 570 313",
    model: "ridgewold-57",
    plate: "5JC 8KP",
    odometerKm: 18_940,
    uses: ["towing", "touring"],
    goal: "The big blower, with the fuel system to match; tows a 2.6 t van across the country.",
    packageCode: "long-grade-24",
    itemCodes: packageItems("long-grade-24"),
    at: at(-31, "11:00"),
  });
  inspected(day, build, -26);
  const quote = addAcceptedQuote(
    day,
    build,
    { issued: at(-25, "10:10"), accepted: at(-20, "20:05"), depositPaid: at(-19, "09:30") },
    { discountPct: 2.5 },
  );
  const job = addJob(workshop, quote, { status: "waiting", at: at(-20, "20:05") });
  addGoodsIn(day, job, {
    at: at(-1, "15:10"),
    countedById: staff.person("joss"),
    missing: "Left bracket of the charge cooler; the maker sends another.",
  });
}

function inspected(day: LiveDay, build: DemoBuild, days: number): void {
  const { staff, at } = day;
  addInspection(day, build, { at: at(days, "10:45"), doneById: staff.person("tilda") });
  addDynoSession(day, {
    build,
    kind: "baseline",
    figures: standardFigures(build.vehicle.model),
    operatorId: staff.person("tilda"),
    at: at(days, "13:30"),
  });
}

function bookedToday(day: LiveDay): void {
  const { workshop, staff, at } = day;
  const build = addEnquiry(day, {
    name: "J. Whitlock",
    phone: "0491 570 737",
    model: "vale-30td",
    plate: "2LW 9GH",
    odometerKm: 76_050,
    uses: ["towing"],
    goal: "Ready for a 3.0 t braked trailer before the harvest.",
    packageCode: "tow-ready",
    itemCodes: packageItems("tow-ready"),
    at: at(-16, "16:20"),
  });
  const quote = addAcceptedQuote(day, build, {
    issued: at(-15, "09:00"),
    accepted: at(-12, "12:40"),
    depositPaid: at(-11, "10:00"),
  });
  const job = addJob(workshop, quote, { status: "booked", at: at(-12, "12:40") });
  addGoodsIn(day, job, { at: at(-4, "11:20"), countedById: staff.person("joss") });
  const madeAt = at(-10, "14:00");
  const work = "Brake controller, socket, gearbox cooler";
  addBooking(day, job, { resource: "Hoist 2", work, from: at(0, "08:00"), to: at(0, "16:00"), madeAt });
  addBooking(day, job, { resource: "Joss Varga", work, from: at(0, "08:00"), to: at(0, "12:00"), madeAt });
}

function bookedTomorrow(day: LiveDay): void {
  const { workshop, staff, at } = day;
  const build = addEnquiry(day, {
    name: "N. Haddow",
    phone: "0491 571 266",
    model: "ridgewold-57",
    plate: "9DM 4RS",
    odometerKm: 6_420,
    uses: ["street"],
    goal: "No chrome.",
    packageCode: "dark-trim-pack",
    itemCodes: packageItems("dark-trim-pack"),
    at: at(-8, "13:00"),
  });
  const quote = addAcceptedQuote(day, build, {
    issued: at(-8, "13:30"),
    accepted: at(-6, "21:10"),
    depositPaid: at(-5, "09:15"),
  });
  const job = addJob(workshop, quote, { status: "booked", at: at(-6, "21:10") });
  addGoodsIn(day, job, { at: at(-2, "10:30"), countedById: staff.person("joss") });
  const madeAt = at(-4, "15:00");
  const work = "Dark trim";
  addBooking(day, job, { resource: "Hoist 2", work, from: at(1, "08:00"), to: at(1, "11:00"), madeAt });
  addBooking(day, job, { resource: "Joss Varga", work, from: at(1, "08:00"), to: at(1, "11:00"), madeAt });
}
