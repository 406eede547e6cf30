import { standardFigures } from "../dyno-curve";
import { addDynoSession } from "../dyno-rows";
import { packageItems } from "../package-items";
import { addQuote } from "../quote-rows";
import { addInspection } from "../work-rows";
import { addEnquiry, type LiveDay } from "./live-day";

/** What the desk still has to sell: quotes out, in the making, and one that lapses tomorrow. */
export function addEnquiries(day: LiveDay): void {
  lapsesTomorrow(day);
  quotedYesterday(day);
  inspectedAndBeingQuoted(day);
  justAsking(day);
}

function lapsesTomorrow(day: LiveDay): void {
  const { workshop, staff, at, date } = day;
  const build = addEnquiry(day, {
    name: "A. Okafor",
    phone: "0491 570 156",
    model: "ridgewold-57",
    plate: "1AB 2CD",
    odometerKm: 24_310,
    uses: ["towing", "touring"],
    goal: "Tow the 3.0 t boat up the range without hunting for gears, more pull in the middle.",
    packageCode: "long-grade-24",
    itemCodes: packageItems("long-grade-24"),
    at: at(-34, "09:20"),
    wantedBy: date(30),
  });
  const issuedById = staff.person("noor");
  addQuote(workshop, build, [
    { status: "superseded", at: at(-33, "11:05"), issuedById },
    {
      status: "issued",
      at: at(-29, "15:40"),
      validUntil: date(1),
      issuedById,
      itemCodes: [...build.itemCodes, "charge-cooler-hot-kit"],
      discountPct: 2,
    },
  ]);
}

function quotedYesterday(day: LiveDay): void {
  const { workshop, staff, at } = day;
  const build = addEnquiry(day, {
    name: "R. Tamsin",
    phone: "0491 570 157",
    model: "vale-30td",
    plate: "4KT 7VN",
    odometerKm: 58_900,
    uses: ["towing"],
    goal: "Tow a 2.8 t caravan with brakes that can be set from the seat.",
    packageCode: "tow-ready",
    itemCodes: packageItems("tow-ready"),
    at: at(-2, "14:10"),
  });
  addQuote(workshop, build, [{ status: "issued", at: at(-1, "10:30"), issuedById: staff.person("noor") }]);
}

function inspectedAndBeingQuoted(day: LiveDay): void {
  const { workshop, staff, at } = day;
  const build = addEnquiry(day, {
    name: "E. Strand",
    phone: "0491 570 158",
    model: "ridgewold-57",
    plate: "6PH 3WD",
    odometerKm: 41_750,
    uses: ["touring", "towing"],
    goal: "Hold the limit with the van on; quiet on the highway.",
    packageCode: "long-haul-19",
    itemCodes: packageItems("long-haul-19"),
    at: at(-9, "08:50"),
  });
  addInspection(day, build, { at: at(-5, "11:30"), doneById: staff.person("tilda") });
  addDynoSession(day, {
    build,
    kind: "baseline",
    figures: standardFigures("ridgewold-57"),
    operatorId: staff.person("tilda"),
    at: at(-5, "14:20"),
  });
  addQuote(workshop, build, [{ status: "draft", at: at(-1, "16:05"), issuedById: staff.person("noor") }]);
}

function justAsking(day: LiveDay): void {
  addEnquiry(day, {
    name: "C. Abernethy",
    phone: "0491 570 159",
    model: "bramlet-trail-20",
    plate: "8BD 1LM",
    odometerKm: 12_480,
    uses: ["touring"],
    goal: "A little taller for beach tracks; asked whether a blower would fit.",
    packageCode: null,
    itemCodes: ["tyres-tall-small-4wd", "speedometer-recalibration"],
    at: day.at(-1, "13:15"),
  });
}
