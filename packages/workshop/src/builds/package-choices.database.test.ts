import { beforeAll, describe, expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import { changeItems, choosePackage } from "./change-items";
import { listOfferedPackages } from "./offered-packages";
import { showSheet } from "./show-sheet";
import { startBuild } from "./start-build";

const trial = demoWorkshop();

let vehicleId: string;
const packageCode = "tow-ready";

beforeAll(async () => {
  const rows = await trial.sql(
    "select v.id from vehicle v join vehicle_model m on m.id = v.vehicle_model_id where m.code = 'ridgewold-57' and v.workshop_id = (select workshop_id from person where email = 'noor@saltbush.example') limit 1",
  );
  vehicleId = String(rows[0]?.id);
  await trial.sql(
    `update package set options = '{dark-trim,blower-19-gt44}', choices = '[
       {"name": "Fuel blend", "pick": "at-most-one", "items": ["runs-on-e10", "runs-on-e85"]},
       {"name": "Plugs", "pick": "exactly-one", "items": ["plugs-one-step", "plugs-two-step"]}]'
     where code = $1`,
    [packageCode],
  );
});

const start = (picked: readonly string[]) => ({
  vehicleId,
  goal: "tow 3 t",
  wantedBy: null,
  packageCode,
  picked: [...picked],
});

describe("a package that leaves something to the owner", () => {
  test("offers what fits the vehicle, with its price", async () => {
    const { packages } = await trial.done("desk", listOfferedPackages, { vehicleId });
    const offered = packages.find(({ code }) => code === packageCode);
    expect(offered?.choices.map(({ name }) => name)).toEqual(["Fuel blend", "Plugs"]);
    expect(offered?.options.map(({ code }) => code)).toEqual(["dark-trim"]);
    expect(offered?.options[0]?.grossMinor).toBeGreaterThan(0);
  });

  test("puts what was picked on the sheet beside what is always in it", async () => {
    const { id } = await trial.done("desk", startBuild, start(["plugs-one-step", "dark-trim"]));
    const sheet = await trial.done("desk", showSheet, { buildId: id });
    const codes = sheet.chosen.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(["tow-3000", "plugs-one-step", "dark-trim"]));
    expect(codes).not.toContain("plugs-two-step");
  });

  test("does not begin with an open choice, or with two where one is asked for", async () => {
    const open = await trial.refused("desk", startBuild, start([]));
    expect(open.code).toBe("package-choice-open");
    expect(open.sentence).toBe("Plugs: choose one of what the package offers.");
    const two = await trial.refused("desk", startBuild, start(["plugs-one-step", "plugs-two-step"]));
    expect(two.code).toBe("package-choice-open");
    const blends = ["plugs-one-step", "runs-on-e10", "runs-on-e85"];
    expect((await trial.refused("desk", startBuild, start(blends))).code).toBe("package-choice-open");
  });

  test("does not take what it does not offer, or not for this vehicle", async () => {
    for (const stray of ["charge-cooler", "blower-19-gt44"])
      expect((await trial.refused("desk", startBuild, start(["plugs-one-step", stray]))).code).toBe(
        "package-choice-unknown",
      );
  });

  test("asks on the build sheet, too, and its choice is taken back whole", async () => {
    const begun = { vehicleId, goal: "tow 3 t", wantedBy: null, packageCode: null };
    const { id: buildId } = await trial.done("desk", startBuild, begun);
    const before = await trial.done("desk", showSheet, { buildId });
    const choice = { buildId, revision: before.revision, packageCode };
    expect((await trial.refused("desk", choosePackage, choice)).code).toBe("package-choice-open");
    const done = await trial.done("desk", choosePackage, { ...choice, picked: ["plugs-two-step"] });
    const { revision, undo } = done;
    await trial.done("desk", changeItems, {
      buildId,
      revision,
      packageCode: undo.packageCode,
      set: [...undo.set],
      remove: [...undo.remove],
    });
    const after = await trial.done("desk", showSheet, { buildId });
    expect(after.chosen).toEqual(before.chosen);
  });

  test("is not offered for a vehicle of another workshop", async () => {
    const refusal = await trial.refused("gulfDesk", listOfferedPackages, { vehicleId });
    expect(refusal.code).toBe("vehicle-not-found");
  });
});
