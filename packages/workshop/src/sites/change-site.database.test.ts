import { describe, expect, test } from "vitest";
import { showSheet } from "../builds/show-sheet";
import { startBuild } from "../builds/start-build";
import { newId } from "../core/new-id";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { changeSite } from "./change-site";
import { showSite } from "./show-site";

const trial = demoWorkshop();
const shown = () => trial.done("owner", showSite, {});

async function asked(change: Readonly<Record<string, unknown>> = {}) {
  const { id, designAmbientC, altitudeM } = await shown();
  return { siteId: id, designAmbientC, altitudeM, seen: { designAmbientC, altitudeM }, ...change };
}

describe("where the site lies", () => {
  test("is kept, is on the audit record, and every forecast of the site is told for it", async () => {
    const { vehicleId } = await aNewVehicle(trial);
    const { id } = await trial.done("desk", startBuild, {
      vehicleId,
      goal: "tow",
      wantedBy: null,
      packageCode: "long-grade-24",
    });
    const hotDay = async () => {
      const { forecast } = await trial.done("desk", showSheet, { buildId: id });
      if (forecast.kind !== "forecast") throw new Error(forecast.sentence);
      return { ...forecast.hotDay.power, tempC: forecast.hotDay.tempC, reference: forecast.power.expected };
    };
    const before = await hotDay();
    expect(
      await trial.done("owner", changeSite, await asked({ altitudeM: 1_200, designAmbientC: 38 })),
    ).toMatchObject({ altitudeM: 1_200, designAmbientC: 38 });
    expect(await shown()).toMatchObject({ altitudeM: 1_200, designAmbientC: 38 });
    const after = await hotDay();
    // 13 % less pressure outweighs 5 °C less heat; the reference stays what it is.
    expect(after.tempC).toBe(38);
    expect(after.expected).toBeLessThan(before.expected * 0.95);
    expect(after.reference).toBe(before.reference);
    const [entry] = await trial.sql("select use_case, after from audit_event where entity = 'site'");
    expect(entry).toMatchObject({ use_case: "sites.change", after: { altitudeM: 1_200 } });
  });

  test("is refused when it was changed by somebody else meanwhile", async () => {
    const seen = await asked({ seen: { designAmbientC: 1, altitudeM: 1 } });
    expect((await trial.refused("owner", changeSite, seen)).code).toBe("stale");
  });

  test("is refused for another workshop's site as for one that does not exist", async () => {
    const foreign = await trial.refused("gulfOwner", changeSite, await asked());
    expect(foreign.code).toBe("site-not-found");
    expect(await trial.refused("owner", changeSite, await asked({ siteId: newId() }))).toEqual(foreign);
  });

  test.each([
    [{ altitudeM: 9_000 }, /between −400 and 4,500 m/],
    [{ altitudeM: 12.5 }, /whole number of metres/],
    [{ designAmbientC: 75 }, /between −20 and 60 °C/],
  ])("is refused as %o", async (change, sentence) => {
    expect((await trial.refused("owner", changeSite, await asked(change))).sentence).toMatch(sentence);
  });
});
