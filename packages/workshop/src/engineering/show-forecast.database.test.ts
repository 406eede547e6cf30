import { describe, expect, test } from "vitest";
import { changeItems } from "../builds/change-items";
import { showSheet } from "../builds/show-sheet";
import { startBuild } from "../builds/start-build";
import { newId } from "../core/new-id";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { measureBaseline } from "../testing/measured-baseline";
import { showForecast } from "./show-forecast";

const trial = demoWorkshop();
let vehicles = 0;

async function aBuild(packageCode: string | null, different: Readonly<Record<string, unknown>> = {}) {
  vehicles += 1;
  const vin = `7A9JBTEST100${String(vehicles).padStart(5, "0")}`;
  const { vehicleId } = await aNewVehicle(trial, { vin, plate: `FC${vehicles}`, ...different });
  const { id } = await trial.done("desk", startBuild, {
    vehicleId,
    goal: "tow",
    wantedBy: null,
    packageCode,
  });
  return { id, vehicleId };
}
const forecastOf = (buildId: string) => trial.done("technician", showForecast, { buildId });

describe("the forecast of a build", () => {
  test("is the band of its package, over the rating until the vehicle has its own baseline", async () => {
    const { id, vehicleId } = await aBuild("long-grade-24");
    const rated = await forecastOf(id);
    expect(rated).toMatchObject({ kind: "forecast", baseline: { source: "rated" }, hotDay: { tempC: 43 } });

    const [workshop] = await trial.sql("select workshop_id from build where id = $1", [id]);
    const workshopId = String(workshop?.workshop_id);
    await trial.database.inWorkshop(workshopId, (tx) =>
      measureBaseline(tx, { workshopId, vehicleId, buildId: id }),
    );
    const own = await forecastOf(id);
    expect(own).toMatchObject({ kind: "forecast", baseline: { source: "measured" } });
  });

  test("is none until an item changes the engine, and says so", async () => {
    const { id } = await aBuild(null);
    expect(await forecastOf(id)).toMatchObject({
      kind: "unchanged",
      sentence: "No chosen item changes the engine's power.",
    });
  });

  test("of a model that was added without figures says what is missing", async () => {
    await trial.sql("update vehicle_model set figures = '{}' where code = 'bramlet-trail-20'");
    const { id } = await aBuild(null, { modelCode: "bramlet-trail-20" });
    const forecast = await forecastOf(id);
    expect(forecast).toMatchObject({ kind: "missing" });
    expect("sentence" in forecast && forecast.sentence).toMatch(
      /^No forecast: the catalogue lacks the displacement of the/,
    );
  });

  test("is refused for another workshop's build as for one that does not exist", async () => {
    const { id } = await aBuild(null);
    const foreign = await trial.refused("gulfDesk", showForecast, { buildId: id });
    expect(foreign.code).toBe("build-not-found");
    expect(await trial.refused("desk", showForecast, { buildId: newId() })).toEqual(foreign);
  });
});

describe("the rules see the torque of the forecast", () => {
  const e85 = [
    "runs-on-e85",
    "port-injection-kit",
    "tank-pump-upgrade",
    "fuel-content-sensor",
    "charge-cooler-hot-kit",
  ];

  test("a build whose engine would make more than the gearbox bears is found out, whatever holds it", async () => {
    const { id } = await aBuild("long-grade-24", { fuelKind: "e85", fuelOctane: 98 });
    const { revision } = await trial.done("desk", showSheet, { buildId: id });
    await trial.done("desk", changeItems, {
      buildId: id,
      revision,
      set: e85.map((code) => ({ code, quantity: 1 })),
      remove: [],
    });
    const { findings, forecast } = await trial.done("desk", showSheet, { buildId: id });
    expect(forecast.kind === "forecast" && forecast.askedOfGearbox.torqueNm).toBeGreaterThan(780);
    expect(findings.map(({ rule }) => rule)).toContain("torque-limit-gearbox");
  });

  test("the package as it is sold stays within it", async () => {
    const { id } = await aBuild("long-grade-24");
    const { findings } = await trial.done("desk", showSheet, { buildId: id });
    expect(findings.map(({ rule }) => rule)).not.toContain("torque-limit-gearbox");
  });
});
