import { describe, expect, test } from "vitest";
import type { ChassisBuild, ChassisItem } from "./chassis-build";
import { chassisOf } from "./chassis-of";
import { missing, type Part, present } from "./part";
import type { ItemChassis } from "./stored-chassis";

/* Every expected figure is worked out by hand from the invented vehicle below. */
const vehicle: ChassisBuild = {
  model: present({ standardTyre: "285/65R18 116T", driven: "all" }),
  driveline: present({ gearRatios: [4, 2, 1.4, 1, 0.8], finalDrive: 3.4, transferRatio: 1, shiftTimeS: 0.2 }),
  tyre: present({ speedometerOverPct: 1, speedTakenAt: "wheels" }),
  masses: present({
    kerbFrontKg: 1400,
    kerbRearKg: 1200,
    frontRatingKg: 1700,
    rearRatingKg: 2000,
    gvmKg: 3300,
    gcmKg: 6000,
    brakedTowKg: 3500,
    unbrakedTowKg: 750,
    ballLimitKg: 350,
    wheelbaseMm: 3000,
    ballBehindRearAxleMm: 1200,
    gravityHeightMm: 700,
    seatRows: [
      { seats: 2, frontAxleShare: 0.5 },
      { seats: 3, frontAxleShare: 0.2 },
    ],
  }),
  road: present({
    topSpeedKmh: 180,
    dragCoefficient: 0.38,
    frontalAreaM2: 3,
    rollingCoefficient: 0.013,
    rotatingFactor: 1.08,
    gripCoefficient: 0.85,
  }),
  items: [],
  trailerGtmKg: null,
  alreadyFitted: "",
};

const item = (code: string, massKg: number, figures: ItemChassis = {}): ChassisItem => ({
  code,
  name: code,
  massKg,
  chassis: figures,
});
const tall = item("tall tyres", 40, {
  masses: { frontAxleShare: 0.5 },
  tyre: { designation: "33x12.50R18LT 118N" },
});
const tow = item("tows 3 t", 300, { masses: { trailerKg: 3000, ballKg: 300 } });
const bar = item("bar", 60, { masses: { frontAxleShare: 1.3 } });

const withItems = (...items: readonly ChassisItem[]) => chassisOf({ ...vehicle, items });

function worked<Value>(part: Part<Value>): Value {
  if (part.missing !== null) throw new Error(part.missing);
  return part.value;
}

describe("tyres", () => {
  test("the standard tyres stay, and bear both axles and the top speed", () => {
    const { isChanged, change, findings } = worked(withItems().tyres);
    expect({ isChanged, change }).toEqual({ isChanged: false, change: "The standard tyres stay." });
    // Index 116 is 1,250 kg, T is 190 km/h (ISO 4000-1).
    expect(findings.map(({ id, grade }) => [id, grade])).toEqual([
      ["tyre-front", "fit"],
      ["tyre-rear", "fit"],
      ["tyre-speed", "fit"],
    ]);
    expect(findings[0]?.sentence).toContain("Two tyres carry 2,500 kg; the front axle is rated 1,700 kg");
  });

  test("33-inch tyres are 11.2 mm larger, and slower than the vehicle until a placard holds the driver", () => {
    const bare = worked(withItems(tall).tyres);
    // 33 × 25.4 = 838.2 against 457 + 2 × 185 = 827.
    expect(bare.rideHeightRiseMm).toBeCloseTo(5.6, 9);
    expect(bare.change).toContain("11.2 mm larger across (1.4 %)");
    expect(bare.findings.find(({ id }) => id === "tyre-speed")).toMatchObject({ grade: "stop" });
    const placard = item("placard", 0, { tyre: { placardKmh: 140 } });
    const held = worked(withItems(tall, placard).tyres).findings.find(({ id }) => id === "tyre-speed");
    expect(held).toMatchObject({ grade: "watch" });
    expect(held?.sentence).toContain("licensed signatory");
    const tooFast = item("placard", 0, { tyre: { placardKmh: 160 } });
    expect(worked(withItems(tall, tooFast).tyres).findings.find(({ id }) => id === "tyre-speed")?.grade).toBe(
      "stop",
    );
  });

  test("tyres that carry less than the axle or than the standard tyre are stopped, with what is needed", () => {
    const weak = item("weak", 0, { tyre: { designation: "285/65R18 92T" } });
    const { findings } = worked(withItems(weak).tyres);
    // Index 92 is 630 kg: 1,260 on an axle.
    expect(findings.filter(({ grade }) => grade === "stop").map(({ id }) => id)).toEqual([
      "tyre-front",
      "tyre-rear",
      "tyre-placard",
    ]);
    expect(findings[1]?.sentence).toContain("at least 1,000 kg each");
  });

  test("a designation that says neither load nor speed is asked for in full", () => {
    const silent = item("silent", 0, { tyre: { designation: "285/65R18" } });
    expect(worked(withItems(silent).tyres).findings).toMatchObject([{ id: "tyre-silent", grade: "stop" }]);
  });

  test("a misprinted designation and two sets at once are told in one sentence, everywhere they matter", () => {
    const misprint = withItems(item("misprint", 0, { tyre: { designation: "285-65-18" } }));
    expect(misprint.tyres.missing).toContain("nearest form is metric");
    expect(misprint.masses.missing).toBe(misprint.tyres.missing);
    const two = withItems(tall, item("other tyres", 0, { tyre: { designation: "265/70R17 112S" } }));
    expect(two.gearing.missing).toBe(
      "Not worked out: tall tyres and other tyres are both chosen. Take one set of tyres off the sheet.",
    );
  });
});

describe("gearing", () => {
  test("taller tyres gear it taller, by diameter", () => {
    const { effectiveFinalDrive, changePct, gears, sentence } = worked(withItems(tall).gearing);
    expect(effectiveFinalDrive).toBeCloseTo((3.4 * 827) / 838.2, 9);
    expect(changePct).toBeCloseTo(-1.336, 3);
    expect(gears.map(({ gear }) => gear)).toEqual([5, 4, 3]);
    // 27.778 m/s ÷ (3.05 × 0.827 m) × 60 × 0.8 × 3.4.
    expect(gears[0]?.rpmBefore).toBeCloseTo(1797.27, 1);
    expect(gears[0]?.rpmAfter).toBeCloseTo((1797.27 * 827) / 838.2, 1);
    expect(sentence).toContain("1.3 % taller");
  });

  test("a lower final drive brings it back", () => {
    const lower = item("lower", 0, { driveline: { finalDrive: 3.7 } });
    expect(worked(withItems(tall, lower).gearing).changePct).toBeCloseTo(
      100 * ((3.7 * 827) / (3.4 * 838.2) - 1),
      9,
    );
  });
});

describe("speedometer", () => {
  test("one that reads 1 % over falls below the true speed on 33-inch tyres", () => {
    const { rows, finding } = worked(withItems(tall).speedometer);
    expect(rows.map(({ shownKmh, words }) => [shownKmh, words])).toEqual([
      [40, "reads low"],
      [80, "reads low"],
      [120, "reads low"],
    ]);
    expect(rows[1]?.trueAfterKmh).toBeCloseTo((80 / 1.01) * (838.2 / 827), 9);
    expect(finding).toMatchObject({ grade: "stop" });
    expect(finding.sentence).toContain("add the speedometer recalibration");
  });

  test("recalibrated it shows what it was set to on the tyres that are fitted", () => {
    const set = item("recalibration", 0, { tyre: { speedometerOverPct: 2 } });
    const { rows, finding } = worked(withItems(tall, set).speedometer);
    expect(rows.map(({ errorPct, meets }) => [Math.round(errorPct * 1000) / 1000, meets])).toEqual([
      [2, true],
      [2, true],
      [2, true],
    ]);
    expect(finding.grade).toBe("fit");
    const wrong = item("recalibration", 0, { tyre: { speedometerOverPct: 25 } });
    expect(worked(withItems(wrong).speedometer).finding.sentence).toContain("reads too high");
  });

  test("taken at the gearbox, a lower final drive makes it show more", () => {
    const lower = item("lower", 0, { driveline: { finalDrive: 3.74 } });
    const build = { ...vehicle, items: [lower] };
    expect(worked(chassisOf(build).speedometer).rows[0]?.errorPct).toBeCloseTo(1, 9);
    const atGearbox = {
      ...build,
      tyre: present({ speedometerOverPct: 1, speedTakenAt: "gearbox" as const }),
    };
    // 1.01 × 3.74 ÷ 3.4.
    expect(worked(chassisOf(atGearbox).speedometer).rows[0]?.errorPct).toBeCloseTo(11.1, 9);
  });
});

describe("masses and axles", () => {
  test("every kilogram is on an axle, with people, parts and ball load where they sit", () => {
    const { lines, travelling, payloadKg, standardPayloadKg } = worked(withItems(bar, tow).masses);
    expect(lines.map(({ massKg, frontKg, rearKg }) => [massKg, frontKg, rearKg])).toEqual([
      [2600, 1400, 1200],
      [60, 78, -18],
      [375, 120, 255],
      [300, -120, 420],
    ]);
    expect(travelling.massKg).toBe(3335);
    expect(travelling.front.loadKg).toBeCloseTo(1478, 9);
    expect(travelling.rear.loadKg).toBeCloseTo(1857, 9);
    // The ball's load is carried, not added: payload is what is left for it and for the people.
    expect([payloadKg, standardPayloadKg]).toEqual([640, 700]);
  });

  test("over the gross mass is a stop that says by how much; an upgrade lifts it, never the combination", () => {
    const over = worked(withItems(bar, tow).masses);
    expect(over.findings).toMatchObject([{ id: "gross-mass", grade: "stop" }]);
    expect(over.findings[0]?.sentence).toContain("Over the gross vehicle mass of 3,300 kg by 35 kg");
    const kit = item("upgrade", 0, { masses: { gvmAddKg: 200, rearRatingAddKg: 100 } });
    const lifted = withItems(bar, tow, kit);
    expect(worked(lifted.masses)).toMatchObject({ gvmKg: 3500, gvmLeftKg: 165 });
    expect(worked(lifted.masses).findings).toMatchObject([{ id: "binding", grade: "fit" }]);
    expect(worked(lifted.towing).limits.find(({ id }) => id === "combination")?.allowedKg).toBe(2965);
  });

  test("the first limit may be an axle, or its tyres", () => {
    const nose = worked(withItems(item("lead", 200, { masses: { frontAxleShare: 1.2 } })).masses);
    expect(nose.findings[0]?.sentence).toContain("Over the rating of the front axle, 1,700 kg, by 60 kg");
    const weak = item("weak", 0, { tyre: { designation: "285/65R18 92T" } });
    const stops = worked(withItems(weak).masses).findings.map(({ sentence }) => sentence);
    expect(stops.join(" ")).toContain("1,260 kg that the two tyres of the front axle carry by 260 kg");
  });

  test("a part of unknown place is counted midway, and named", () => {
    const { added, placedMidway } = worked(withItems(item("fridge", 30)).masses);
    expect(added).toMatchObject([{ massKg: 30, frontKg: 15, rearKg: 15 }]);
    expect(placedMidway).toEqual(["fridge"]);
  });

  test("a plate that contradicts itself is told, not drawn", () => {
    const masses = vehicle.masses.missing === null ? { ...vehicle.masses.value, gcmKg: 3000 } : null;
    const told = chassisOf({ ...vehicle, masses: masses ? present(masses) : missing("") });
    expect(told.masses.missing).toContain("check the plate");
    expect(told.towing.missing).toBe(told.masses.missing);
  });
});

describe("towing", () => {
  test("the ball's load counts once: the whole trailer against what the combination leaves beside the vehicle", () => {
    const { limits, findings, trailer } = worked(withItems(tow).towing);
    expect(trailer).toEqual({ trailerKg: 3000, ballKg: 300, onWheelsKg: 2700, isBallAssumed: false });
    // 6,000 − (2,600 + 375).
    expect(limits.map(({ id, allowedKg, leftKg }) => [id, allowedKg, leftKg])).toEqual([
      ["tow-rating", 3500, 500],
      ["combination", 3025, 25],
      ["ball", 325, 25],
    ]);
    expect(limits[2]?.heldBy).toContain("gross vehicle mass");
    expect(findings).toMatchObject([{ grade: "fit" }]);
  });

  test("each limit that is passed is a stop with what to do", () => {
    const { findings } = worked(withItems(tow, item("canopy", 200)).towing);
    // The vehicle takes 3,175 of 6,000 kg, and its own gross mass leaves 125 kg for the ball.
    expect(findings.map(({ id, grade }) => [id, grade])).toEqual([
      ["towing-combination", "stop"],
      ["towing-ball", "stop"],
    ]);
    expect(findings[0]?.sentence).toContain("over by 175 kg");
  });

  test("the trailer recorded with the vehicle counts too, a tenth of it taken to rest on the ball", () => {
    const { trailer } = worked(chassisOf({ ...vehicle, trailerGtmKg: 1800 }).towing);
    expect(trailer).toEqual({ trailerKg: 2000, ballKg: 200, onWheelsKg: 1800, isBallAssumed: true });
  });

  test("without a trailer it says what may be towed", () => {
    const { heaviestKg, findings } = worked(withItems().towing);
    // 6,000 − 2,975 by the combination; a tenth of it is less than the 325 kg the gross mass leaves.
    expect(heaviestKg).toBe(3025);
    expect(findings[0]?.sentence).toContain("up to 3,025 kg");
  });
});

test("a figure that the catalogue lacks is named once for each part that needs it, and the rest is told", () => {
  const lacking = "Not worked out: the catalogue does not have the wheelbase of the Kerrow Ridgewold 5.7.";
  const told = chassisOf({ ...vehicle, masses: missing(lacking), items: [tall] });
  expect([told.tyres.missing, told.masses.missing, told.towing.missing]).toEqual([lacking, lacking, lacking]);
  expect([told.gearing.missing, told.speedometer.missing]).toEqual([null, null]);
});
