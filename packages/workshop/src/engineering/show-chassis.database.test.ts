import { beforeAll, describe, expect, test } from "vitest";
import { changeItems } from "../builds/change-items";
import { showSheet } from "../builds/show-sheet";
import { startBuild } from "../builds/start-build";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { showChassis } from "./show-chassis";

const trial = demoWorkshop();
let buildId = "";

/** Published worked examples of the check digit (49 CFR 565.15, and a national standard of the same sum). */
const vehicles = [
  { modelCode: "ridgewold-57-lift", vin: "1G4AH59H45G118341", fuelKind: "petrol", fuelOctane: 98 },
  { modelCode: "vale-30td", vin: "1J9RP1A36A1644345", fuelKind: "diesel", fuelOctane: null },
  { modelCode: "orrismere-gt44", vin: "JH2RC3605MM101581", fuelKind: "petrol", fuelOctane: 98 },
  { modelCode: "bramlet-trail-20", vin: "11111111111111111", fuelKind: "petrol", fuelOctane: 91 },
] as const;

async function aBuild(different: Readonly<Record<string, unknown>> = {}): Promise<string> {
  const { vehicleId } = await aNewVehicle(trial, different);
  const build = await trial.done("desk", startBuild, {
    vehicleId,
    goal: "taller, and tow",
    wantedBy: null,
    packageCode: null,
  });
  return build.id;
}

async function choose(id: string, ...codes: readonly string[]) {
  const { revision } = await trial.done("desk", showSheet, { buildId: id });
  await trial.done("desk", changeItems, {
    buildId: id,
    revision,
    set: codes.map((code) => ({ code, quantity: 1 })),
    remove: [],
  });
}

const read = (id = buildId) => trial.done("desk", showChassis, { buildId: id });

beforeAll(async () => {
  buildId = await aBuild();
});

describe("on a standard Ridgewold 5.7", () => {
  test("nothing is changed, and the payload is what the plate leaves", async () => {
    const { tyres, gearing, speedometer, masses, towing } = await read();
    expect(tyres).toMatchObject({ missing: null, value: { isChanged: false } });
    expect(gearing).toMatchObject({ missing: null, value: { isChanged: false } });
    expect(speedometer).toMatchObject({ missing: null, value: { finding: { grade: "fit" } } });
    expect(masses).toMatchObject({ missing: null, value: { payloadKg: 710, gvmLeftKg: 335 } });
    expect(towing).toMatchObject({ missing: null, value: { trailer: null } });
  });

  test("33-inch tyres make the speedometer read low until it is recalibrated", async () => {
    await choose(buildId, "lift-50", "tyres-33");
    const low = await read();
    expect(low.speedometer).toMatchObject({ value: { finding: { grade: "stop" } } });
    await choose(buildId, "speedometer-recalibration", "tyre-placard");
    const { speedometer, tyres } = await read();
    expect(speedometer).toMatchObject({ value: { setToOverPct: 2, finding: { grade: "fit" } } });
    expect(tyres.missing === null && tyres.value.findings.map(({ id, grade }) => [id, grade])).toEqual([
      ["tyre-front", "fit"],
      ["tyre-rear", "fit"],
      ["tyre-placard", "fit"],
      ["tyre-speed", "watch"],
    ]);
  });

  test("the mass table and the sheet's payload link agree to the kilogram, with every part counted", async () => {
    await choose(buildId, "tow-3000", "front-bar");
    const { masses } = await read();
    const { capacities, findings } = await trial.done("desk", showSheet, { buildId });
    const payload = capacities.find(({ rule }) => rule === "payload");
    expect(payload).toBeDefined();
    expect(masses).toMatchObject({
      value: { gvmLeftKg: (payload?.supply ?? 0) - (payload?.demand ?? 0) },
    });
    // 45 + 18 + 62 of parts and 300 on the ball, of 335.
    expect(masses).toMatchObject({ value: { gvmLeftKg: -90, findings: [{ id: "gross-mass" }] } });
    expect(findings.map(({ rule }) => rule)).toContain("payload");
    await choose(buildId, "gvm-kit");
    expect((await read()).masses).toMatchObject({ value: { gvmLeftKg: 160, findings: [{ grade: "fit" }] } });
  });

  test("a boosted build is quicker by a band, whatever else it gained in weight", async () => {
    const id = await aBuild({ vin: "1HGCM82633A004352" });
    await choose(id, "blower-24-92", "charge-cooler", "boost-calibration", "hp-pump-upgrade");
    const { acceleration, masses } = await read(id);
    if (acceleration.missing !== null) throw new Error(acceleration.missing);
    const { rows, massBeforeKg, massAfterKg, assumptions } = acceleration.value;
    // Blower 58, cooler 16 and pump 2 kg; kerb 2,640 and a driver of 75.
    expect([massBeforeKg, massAfterKg]).toEqual([2715, 2791]);
    expect(masses).toMatchObject({ value: { payloadKg: 710 - 76 } });
    for (const { id: goal, before, difference } of rows) {
      expect(before?.expected, goal).toBeGreaterThan(2);
      expect(difference?.high, goal).toBeLessThan(0);
      expect(difference?.low, goal).toBeLessThan(difference?.high ?? 0);
    }
    expect(assumptions.join(" ")).toContain("no baseline of its own");
  });

  test("a part in place of a standard one adds only what it weighs more, and nothing where it stands already", async () => {
    const added = async (modelCode: string, vin: string) => {
      const id = await aBuild({ modelCode, vin });
      await choose(id, "tyres-33", "lift-50");
      const { masses } = await read(id);
      const { capacities } = await trial.done("desk", showSheet, { buildId: id });
      const uses = ["payload", "front-axle"].map(
        (rule) => capacities.find((each) => each.rule === rule)?.demand,
      );
      return [
        masses.missing === null && masses.value.added.map(({ id: code, massKg }) => [code, massKg]),
        uses,
      ];
    };
    // Five tyres of 30 kg for five of 21 kg, and the lift.
    expect(await added("ridgewold-57", "7A9JBTEST10090001")).toEqual([
      [
        ["tyres-33", 45],
        ["lift-50", 18],
      ],
      [63, 24],
    ]);
    expect(await added("ridgewold-57-lift", "7A9JBTEST10090002")).toEqual([[], [0, 0]]);
  });

  test("twice of an item weighs twice", async () => {
    const id = await aBuild({ vin: "5GZCZ43D13S812715" });
    const { revision } = await trial.done("desk", showSheet, { buildId: id });
    const set = [{ code: "driving-lamps", quantity: 2 }];
    await trial.done("desk", changeItems, { buildId: id, revision, set, remove: [] });
    expect((await read(id)).masses).toMatchObject({ value: { added: [{ massKg: 10 }] } });
  });
});

describe("every demo model answers", () => {
  test.each(vehicles)("$modelCode", async (vehicle) => {
    const told = await read(await aBuild(vehicle));
    const { tyres, gearing, speedometer, masses, towing, acceleration } = told;
    expect([tyres, gearing, speedometer, masses, towing, acceleration].map((part) => part.missing)).toEqual(
      Array(6).fill(null),
    );
    expect(acceleration).toMatchObject({ value: { isChanged: false } });
    expect(masses).toMatchObject({ value: { findings: [{ grade: "fit" }] } });
  });

  test("a model without figures says which are lacking, and refuses nothing else", async () => {
    await trial.sql(
      "update vehicle_model set figures = figures #- '{masses,wheelbaseMm}' where code = 'orrismere-gt44'",
    );
    const [row] = await trial.sql(
      "select b.id from build b join vehicle v on v.id = b.vehicle_id join vehicle_model m on m.id = v.vehicle_model_id where m.code = 'orrismere-gt44' order by b.number desc limit 1",
    );
    const { masses, gearing } = await read(String(row?.id));
    expect(masses.missing).toBe(
      "Not worked out: the catalogue does not have the wheelbase of the Orrismere GT 4.4. Add what is missing to the model's figures.",
    );
    expect(gearing.missing).toBeNull();
  });
});

test("an item whose figures cannot be read is named in every part, and the sheet still opens", async () => {
  await trial.sql(
    `update item set figures = '{"masses": {"frontAxleShare": "in front"}}' where code = 'driving-lamps'`,
  );
  const id = await aBuild({ vin: "1M8GDM9A1KP042788" });
  await choose(id, "driving-lamps");
  const { alreadyFitted: _, ...parts } = await read(id);
  expect(Object.values(parts).map((part) => part.missing)).toEqual(
    Array(6).fill(
      "Not worked out: the figures of Driving lamps, slim pair in the catalogue cannot be read. Mend them first.",
    ),
  );
});

describe("who may look", () => {
  test.each(["desk", "manager", "technician", "owner"] as const)("the %s may", async (part) => {
    expect(await trial.done(part, showChassis, { buildId })).toMatchObject({ tyres: { missing: null } });
  });

  test("another workshop finds no such build", async () => {
    expect(await trial.refused("gulfDesk", showChassis, { buildId })).toMatchObject({
      code: "build-not-found",
    });
  });

  test("a build that is not one is refused at its field", async () => {
    expect(await trial.refused("desk", showChassis, { buildId: "sheet 7" })).toMatchObject({
      sentence: "Open the build from the list.",
    });
  });
});
