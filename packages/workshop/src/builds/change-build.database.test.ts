import { beforeAll, describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { changeItems, choosePackage } from "./change-items";
import { editGoal } from "./edit-goal";
import { listBuilds } from "./list-builds";
import { recordInspection } from "./record-inspection";
import { showSheet } from "./show-sheet";
import { startBuild } from "./start-build";

const trial = demoWorkshop();
let vehicleId = "";
const wish = { goal: "pull a van over the range", wantedBy: null, packageCode: null };

const start = (different = {}) => trial.done("desk", startBuild, { vehicleId, ...wish, ...different });
const sheet = (buildId: string) => trial.done("desk", showSheet, { buildId });
const one = (code: string, quantity = 1) => ({ set: [{ code, quantity }], remove: [] });

beforeAll(async () => {
  ({ vehicleId } = await aNewVehicle(trial));
});

describe("starting a build", () => {
  test("from a package fills its items", async () => {
    const { id } = await start({ packageCode: "long-grade-24" });
    const { chosen, package: chosenPackage, findings } = await sheet(id);
    expect(chosenPackage?.promise).toMatchObject({ lowKw: 325, highKw: 375, at: "hubs" });
    expect(chosen.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["blower-24-92", "hp-pump-upgrade", "charge-cooler"]),
    );
    // The site is designed for 43 °C, and the package leaves the hot-climate kit to the place.
    expect(findings.map(({ rule }) => rule)).toEqual(["hot-kit-for-hot-places"]);
  });

  test("takes a day that is today or later, by the workshop's own clock", async () => {
    // 15:00 UTC on the 25th is already the 26th in Adelaide.
    const evening = new Date("2026-11-25T15:00:00Z");
    const refusal = await trial.refused(
      "desk",
      startBuild,
      { vehicleId, ...wish, wantedBy: "2026-11-25" },
      evening,
    );
    expect(refusal).toMatchObject({ code: "wanted-by-past", field: "wantedBy" });
    await trial.done("desk", startBuild, { vehicleId, ...wish, wantedBy: "2026-11-26" }, evening);
  });

  test("is refused for another workshop's vehicle as for one that does not exist", async () => {
    const foreign = await trial.refused("gulfDesk", startBuild, { vehicleId, ...wish });
    const nowhere = await trial.refused("desk", startBuild, { vehicleId: newId(), ...wish });
    expect(foreign.code).toBe("vehicle-not-found");
    expect(nowhere).toEqual(foreign);
  });

  test("is refused from a package that is made for other models, or that is none", async () => {
    const vale = await trial.sql(
      "select v.id from vehicle v join vehicle_model m on m.id = v.vehicle_model_id where m.code = 'bramlet-trail-20' or m.code = 'vale-30td' limit 1",
    );
    const other = String(vale[0]?.id);
    const unfit = await trial.refused("desk", startBuild, {
      vehicleId: other,
      ...wish,
      packageCode: "long-grade-24",
    });
    expect(unfit.code).toBe("package-does-not-fit");
    const unknown = await trial.refused("desk", startBuild, { vehicleId, ...wish, packageCode: "no-such" });
    expect(unknown.code).toBe("package-unknown");
  });

  test("needs a few words of what is wanted", async () => {
    const refusal = await trial.refused("desk", startBuild, { vehicleId, ...wish, goal: "  " });
    expect(refusal).toMatchObject({ code: "invalid-input", field: "goal" });
  });

  test("on E10 puts that duty on the sheet", async () => {
    const { vehicleId: thirsty } = await aNewVehicle(trial, {
      vin: "11111111111111111",
      fuelKind: "e10",
      fuelOctane: 95,
    });
    const { id } = await start({ vehicleId: thirsty });
    expect((await sheet(id)).chosen).toEqual([{ code: "runs-on-e10", quantity: 1 }]);
  });
});

describe("changing a build", () => {
  test("a quantity of nothing, or less than nothing, is refused", async () => {
    const { id: buildId } = await start();
    for (const quantity of [0, -1, 1.5]) {
      const refusal = await trial.refused("desk", changeItems, {
        buildId,
        revision: 1,
        ...one("oil-service", quantity),
      });
      expect(refusal.code).toBe("invalid-input");
      expect(refusal.sentence).toMatch(/quantity/i);
    }
  });

  test("in two windows tells the second, and changes nothing", async () => {
    const { id: buildId } = await start();
    await trial.done("desk", changeItems, { buildId, revision: 1, ...one("oil-service") });
    const refusal = await trial.refused("manager", changeItems, {
      buildId,
      revision: 1,
      ...one("charge-cooler"),
    });
    expect(refusal.code).toBe("stale");
    expect((await sheet(buildId)).chosen).toEqual([{ code: "oil-service", quantity: 1 }]);
  });

  test("an unknown item and one for another model are refused", async () => {
    const { id: buildId } = await start();
    const unknown = await trial.refused("desk", changeItems, { buildId, revision: 1, ...one("anvil") });
    expect(unknown.code).toBe("item-unknown");
    const unfit = await trial.refused("desk", changeItems, { buildId, revision: 1, ...one("headers-gt44") });
    expect(unfit.code).toBe("item-does-not-fit");
  });

  test("a technician may look, and not change", async () => {
    const { id: buildId } = await start();
    await trial.done("technician", showSheet, { buildId });
    for (const refusal of [
      await trial.refused("technician", changeItems, { buildId, revision: 1, ...one("oil-service") }),
      await trial.refused("technician", choosePackage, { buildId, revision: 1, packageCode: null }),
      await trial.refused("technician", startBuild, { vehicleId, ...wish }),
    ]) {
      expect(refusal.code).toBe("not-allowed");
    }
  });

  test("another workshop's build does not exist", async () => {
    const { id: buildId } = await start();
    for (const refusal of [
      await trial.refused("gulfDesk", showSheet, { buildId }),
      await trial.refused("gulfDesk", changeItems, { buildId, revision: 1, set: [], remove: [] }),
      await trial.refused("gulfDesk", choosePackage, { buildId, revision: 1, packageCode: null }),
      await trial.refused("gulfDesk", editGoal, { buildId, revision: 1, goal: "mine now", wantedBy: null }),
    ]) {
      expect(refusal.code).toBe("build-not-found");
    }
  });

  test("is written into the audit record with before and after", async () => {
    const { id: buildId } = await start();
    await trial.done("desk", changeItems, { buildId, revision: 1, ...one("oil-service", 2) });
    const [event] = await trial.sql(
      "select before, after, actor_name from audit_event where entity_id = $1 and use_case = 'builds.change-items'",
      [buildId],
    );
    expect(event).toMatchObject({
      before: { items: [] },
      after: { items: [{ code: "oil-service", quantity: 2 }] },
      actor_name: "Noor Castellan",
    });
  });

  test("choosing a package keeps what stood beside it and can be taken back", async () => {
    const { id: buildId } = await start();
    const first = await trial.done("desk", changeItems, { buildId, revision: 1, ...one("dark-trim") });
    const chosen = await trial.done("desk", choosePackage, {
      buildId,
      revision: first.revision,
      packageCode: "long-haul-19",
    });
    const filled = await sheet(buildId);
    expect(filled.packageCode).toBe("long-haul-19");
    expect(filled.chosen.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["dark-trim", "blower-19-88"]),
    );
    await trial.done("desk", changeItems, { buildId, revision: chosen.revision, ...chosen.undo });
    const back = await sheet(buildId);
    expect(back.chosen).toEqual([{ code: "dark-trim", quantity: 1 }]);
    expect(back.packageCode).toBeNull();
  });

  test("the goal changes, and a passed day may stay but not be chosen", async () => {
    const { id: buildId } = await start({ wantedBy: "2026-11-26" });
    const later = new Date("2026-12-01T00:00:00Z");
    const goal = "pull a heavier van";
    await trial.done("desk", editGoal, { buildId, revision: 1, goal, wantedBy: "2026-11-26" }, later);
    const refusal = await trial.refused(
      "desk",
      editGoal,
      { buildId, revision: 2, goal, wantedBy: "2026-11-30" },
      later,
    );
    expect(refusal.code).toBe("wanted-by-past");
    const stale = await trial.refused("desk", editGoal, { buildId, revision: 1, goal, wantedBy: null });
    expect(stale.code).toBe("stale");
  });

  test("builds are found by owner, number, goal and part", async () => {
    const { id, number } = await start({ goal: "quieter on the beach" });
    await trial.done("desk", changeItems, { buildId: id, revision: 1, ...one("cat-back-exhaust") });
    for (const search of [String(number), "on the BEACH", "cat-back"]) {
      const { builds } = await trial.done("desk", listBuilds, { search });
      expect(builds.map((build) => build.id)).toContain(id);
    }
    const { builds } = await trial.done("gulfDesk", listBuilds, { search: "quieter" });
    expect(builds).toEqual([]);
  });
});

describe("the pre-build inspection", () => {
  const sound = {
    odometerKm: 24_400,
    leakDownWorstPct: 12,
    leakDownSpreadPct: 6,
    fuelTrimWorstPct: -8,
    misfireCodes: false,
    coolingSound: true,
    note: "",
  };

  test("passes at its limits, stands for 60 days and 3,000 km, and meets the rule that asks for it", async () => {
    const { id: buildId } = await start({ packageCode: null });
    await trial.done("desk", changeItems, { buildId, revision: 1, ...one("blower-24-92") });
    const done = await trial.done("technician", recordInspection, { buildId, ...sound });
    expect(done).toMatchObject({
      outcome: "passed",
      validUntil: "2027-01-24",
      validToOdometerKm: 27_400,
    });
    const { findings, inspection } = await sheet(buildId);
    expect(inspection).toMatchObject({ stands: true, doneBy: "Tilda Brennock", doneOn: "2026-11-25" });
    expect(findings.map(({ rule }) => rule)).not.toContain("inspect-before-boost");

    const tooLate = new Date("2027-01-25T02:00:00Z");
    const lapsed = await trial.done("desk", showSheet, { buildId }, tooLate);
    expect(lapsed.inspection?.stands).toBe(false);
    expect(lapsed.findings.map(({ rule }) => rule)).toContain("inspect-before-boost");
  });

  test("fails with every reason when the readings are outside", async () => {
    const { id: buildId } = await start();
    const failed = await trial.done("manager", recordInspection, {
      buildId,
      ...sound,
      leakDownWorstPct: 12.1,
      leakDownSpreadPct: 7,
      fuelTrimWorstPct: 8.5,
      misfireCodes: true,
      coolingSound: false,
    });
    expect(failed.outcome).toBe("failed");
    expect(failed.reasons).toHaveLength(5);
    expect((await sheet(buildId)).inspection?.stands).toBe(false);
  });

  test("an odometer that ran back and a percentage beyond 100 are refused", async () => {
    const { id: buildId } = await start();
    const back = await trial.refused("technician", recordInspection, { buildId, ...sound, odometerKm: 10 });
    expect(back).toMatchObject({ code: "odometer-back", field: "odometerKm" });
    const beyond = await trial.refused("technician", recordInspection, {
      buildId,
      ...sound,
      leakDownWorstPct: 101,
    });
    expect(beyond).toMatchObject({ code: "invalid-input", field: "leakDownWorstPct" });
  });

  test("is not the desk's to record", async () => {
    const { id: buildId } = await start();
    expect((await trial.refused("desk", recordInspection, { buildId, ...sound })).code).toBe("not-allowed");
  });
});
