import { describe, expect, test } from "vitest";
import { changeItems } from "../builds/change-items";
import { findAlternatives } from "../builds/find-alternatives";
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
  const hotKit = { set: [{ code: "charge-cooler-hot-kit", quantity: 1 }], remove: [] };
  const show = (buildId: string) => trial.done("desk", showSheet, { buildId });
  const buysE85 = (vehicleId: string) =>
    trial.sql("update vehicle set fuel_kind = 'e85' where id = $1", [vehicleId]);

  test("a build whose engine would make more than the gearbox bears is found out, whatever holds it", async () => {
    const { id, vehicleId } = await aBuild("long-grade-24");
    const { revision } = await show(id);
    await trial.done("desk", changeItems, { buildId: id, revision, ...hotKit });
    await buysE85(vehicleId);
    const { findings, forecast } = await show(id);
    expect(forecast.kind === "forecast" && forecast.askedOfGearbox.torqueNm).toBeGreaterThan(780);
    expect(findings.map(({ rule }) => rule)).toContain("torque-limit-gearbox");
  });

  test("a choice is judged by the torque that the engine would make with it, before it is made", async () => {
    const { id, vehicleId } = await aBuild("long-grade-24");
    const whyNot = async () =>
      (await show(id)).systems
        .flatMap(({ choices }) => choices)
        .find(({ code }) => code === "charge-cooler-hot-kit")?.obstacle?.because ?? null;
    expect(await whyNot()).toBeNull();
    await buysE85(vehicleId);
    expect(await whyNot()).toMatch(/^More than 780 N·m at the crank/);
    const { forecast, findings, revision } = await show(id);
    expect(forecast.kind === "forecast" && forecast.askedOfGearbox.torqueNm).toBeLessThan(781);
    // The place is hot and asks for the kit, but what breaks another rule is no fix.
    expect(findings.find(({ rule }) => rule === "hot-kit-for-hot-places")?.fixes).toEqual([]);
    const found = await findAlternatives(
      await trial.as("desk"),
      { buildId: id },
      new AbortController().signal,
    );
    // The kit alone is too much; with a milder pulley it is not, and that is what completes the build.
    const alternatives = found.ok ? found.value.alternatives : [];
    const added = alternatives.map(({ offer }) => offer.add.map(({ code }) => code));
    for (const codes of added.filter((each) => each.includes("charge-cooler-hot-kit")))
      expect(codes).toContain("pulley-24-98");
    const refusal = await trial.refused("desk", changeItems, { buildId: id, revision, ...hotKit });
    expect(refusal.code).toBe("item-excluded");
  });

  test("the package as it is sold stays within it", async () => {
    const { id } = await aBuild("long-grade-24");
    const { findings } = await show(id);
    expect(findings.map(({ rule }) => rule)).not.toContain("torque-limit-gearbox");
  });
});
