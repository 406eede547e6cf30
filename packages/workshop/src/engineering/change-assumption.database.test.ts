import { beforeAll, describe, expect, test } from "vitest";
import { showSheet } from "../builds/show-sheet";
import { startBuild } from "../builds/start-build";
import { newId } from "../core/new-id";
import { compareVersions } from "../quotes/compare-versions";
import { draftFromBuild } from "../quotes/draft-from-build";
import { issueVersion } from "../quotes/issue-version";
import { makeVersion } from "../quotes/make-version";
import { showQuote } from "../quotes/show-quote";
import { takeBuildAgain } from "../quotes/take-build-again";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { changeAssumption, resetAssumption } from "./change-assumption";

const trial = demoWorkshop();
let vehicleId = "";

beforeAll(async () => {
  ({ vehicleId } = await aNewVehicle(trial));
});

async function aBuild(packageCode: string | null = "long-haul-19") {
  const wish = { vehicleId, goal: "tow", wantedBy: null, packageCode };
  return (await trial.done("desk", startBuild, wish)).id;
}

async function sheetOf(buildId: string) {
  const sheet = await trial.done("desk", showSheet, { buildId });
  if (sheet.forecast.kind !== "forecast") throw new Error(sheet.forecast.sentence);
  return { ...sheet, forecast: sheet.forecast };
}

const spark = { name: "retardAt60KPaDeg", value: 14, reason: "Buys 98 from one pump that tested low" };

async function changed(buildId: string, different: Readonly<Record<string, unknown>> = {}) {
  const { revision } = await sheetOf(buildId);
  return trial.done("manager", changeAssumption, { buildId, revision, ...spark, ...different });
}

describe("an assumption changed on a build", () => {
  test("moves its forecast, and says by whom and why", async () => {
    const buildId = await aBuild();
    const before = await sheetOf(buildId);
    await changed(buildId);
    const after = await sheetOf(buildId);
    expect(after.forecast.power.expected).toBeLessThan(before.forecast.power.expected);
    expect(after.assumptionChanges).toMatchObject({
      retardAt60KPaDeg: { value: 14, reason: spark.reason, by: "Marek Oduya" },
    });
    expect(after.forecast.assumptions.find(({ name }) => name === spark.name)).toMatchObject({
      usual: 11,
      used: 14,
      isChanged: true,
    });
  });

  test("is audited with what stood before, and goes back to what is usual", async () => {
    const buildId = await aBuild();
    const before = await sheetOf(buildId);
    const { revision } = await changed(buildId);
    await trial.done("owner", resetAssumption, { buildId, revision, name: spark.name });
    const after = await sheetOf(buildId);
    expect(after.forecast.power).toEqual(before.forecast.power);
    const rows = await trial.sql(
      "select use_case, before, after from audit_event where entity_id = $1 and use_case like 'engineering.%' order by at, id",
      [buildId],
    );
    expect(rows).toMatchObject([
      {
        use_case: "engineering.change-assumption",
        before: { assumption: { retardAt60KPaDeg: null } },
        after: { assumption: { retardAt60KPaDeg: { value: 14, reason: spark.reason } } },
      },
      { use_case: "engineering.reset-assumption", after: { assumption: { retardAt60KPaDeg: null } } },
    ]);
  });

  test("of the road moves the times alone, and stands on the quote's record with its reason", async () => {
    const buildId = await aBuild();
    const before = await sheetOf(buildId);
    const { revision } = before;
    const uphill = { name: "roadSlopePct", value: 8, reason: "the customer asks for the climb out of town" };
    await trial.done("manager", changeAssumption, { buildId, revision, ...uphill });
    const after = await sheetOf(buildId);
    expect(after.forecast).toEqual(before.forecast);
    const to100 = ({ chassis }: typeof before) =>
      chassis.acceleration.missing === null ? (chassis.acceleration.value.rows[0]?.after?.expected ?? 0) : 0;
    expect(to100(after)).toBeGreaterThan(to100(before) + 0.3);
    const { quoteId } = await trial.done("desk", draftFromBuild, { buildId });
    const [version] = await trial.sql("select forecast from quote_version where quote_id = $1", [quoteId]);
    expect(version?.forecast).toMatchObject({
      changed: [{ name: "roadSlopePct", usual: 0, used: 8, reason: uphill.reason }],
    });
  });

  test("concerns its own build alone", async () => {
    const [one, other] = [await aBuild(), await aBuild()];
    await changed(one);
    expect((await sheetOf(other)).assumptionChanges).toEqual({});
  });
});

describe("a change of an assumption is refused", () => {
  const refusedFor = async (different: Readonly<Record<string, unknown>>) => {
    const buildId = await aBuild();
    const { revision } = await sheetOf(buildId);
    return trial.refused("manager", changeAssumption, { buildId, revision, ...spark, ...different });
  };

  test("outside what can be meant, with the range in its sentence", async () => {
    const refusal = await refusedFor({ value: 45 });
    expect(refusal).toMatchObject({ code: "assumption-out-of-range", field: "value" });
    expect(refusal.sentence).toContain("between 0 and 30°");
  });

  test("without a reason, or with a figure that is none", async () => {
    expect(await refusedFor({ reason: "  " })).toMatchObject({
      field: "reason",
      sentence: expect.stringContaining("Say why this build differs"),
    });
    expect(await refusedFor({ value: Number.NaN })).toMatchObject({
      field: "value",
      sentence: expect.stringContaining("Type the figure as a number"),
    });
  });

  test("for a name that is no assumption", async () => {
    expect((await refusedFor({ name: "luck" })).sentence).toContain("Choose an assumption from the list");
  });

  test("on a sheet that somebody else has changed meanwhile", async () => {
    const buildId = await aBuild();
    const { revision } = await sheetOf(buildId);
    await changed(buildId);
    const stale = { buildId, revision, name: spark.name };
    expect((await trial.refused("owner", changeAssumption, { ...stale, ...spark })).code).toBe("stale");
    expect((await trial.refused("owner", resetAssumption, stale)).code).toBe("stale");
  });

  test("when there is nothing to take back", async () => {
    const buildId = await aBuild();
    const { revision } = await sheetOf(buildId);
    const refusal = await trial.refused("owner", resetAssumption, { buildId, revision, name: spark.name });
    expect(refusal.code).toBe("assumption-not-changed");
  });

  test("for a build that is not in this workshop", async () => {
    const buildId = await aBuild();
    const { revision } = await sheetOf(buildId);
    const foreign = { buildId, revision, ...spark };
    const nowhere = { ...foreign, buildId: newId() };
    for (const input of [foreign, nowhere]) {
      const part = input === foreign ? "gulfOwner" : "owner";
      expect((await trial.refused(part, changeAssumption, input)).code).toBe("build-not-found");
      const reset = { buildId: input.buildId, revision, name: spark.name };
      expect((await trial.refused(part, resetAssumption, reset)).code).toBe("build-not-found");
    }
  });

  test("to the desk and on the floor: they read what is assumed", async () => {
    const buildId = await aBuild();
    const { revision } = await sheetOf(buildId);
    for (const part of ["desk", "technician"] as const)
      expect((await trial.refused(part, changeAssumption, { buildId, revision, ...spark })).code).toBe(
        "not-allowed",
      );
  });
});

describe("the quote's record", () => {
  test("keeps the forecast it rested on, and what was assumed, whatever is changed afterwards", async () => {
    const buildId = await aBuild();
    await changed(buildId);
    const { quoteId, versionId } = await trial.done("desk", draftFromBuild, { buildId });
    const { forecast } = await sheetOf(buildId);
    const first = await trial.done("desk", showQuote, { quoteId });
    expect(first.shown.forecast).toMatchObject({
      powerKw: forecast.power,
      changed: [{ name: spark.name, used: 14, usual: 11, reason: spark.reason, by: "Marek Oduya" }],
    });
    await trial.done("desk", issueVersion, { versionId, revision: first.shown.revision });
    await changed(buildId, { value: 8, reason: "Tested again: good fuel" });
    const { shown } = await trial.done("desk", showQuote, { quoteId });
    expect(shown.forecast).toEqual(first.shown.forecast);
    await expect(
      trial.sql("update quote_version set forecast = null where id = $1", [versionId]),
    ).rejects.toThrow(/issued_version_is_final/);
  });

  test("says from version to version what became of forecast and assumptions", async () => {
    const buildId = await aBuild();
    const { quoteId, versionId } = await trial.done("desk", draftFromBuild, { buildId });
    const { shown } = await trial.done("desk", showQuote, { quoteId });
    await trial.done("desk", issueVersion, { versionId, revision: shown.revision });
    await changed(buildId);
    const next = await trial.done("desk", makeVersion, { versionId });
    const copied = await trial.done("desk", compareVersions, { quoteId, from: 1, to: 2 });
    expect(copied.forecast).toEqual([]);

    const draft = await trial.done("desk", showQuote, { quoteId });
    await trial.done("desk", takeBuildAgain, { versionId: next.versionId, revision: draft.shown.revision });
    const { forecast } = await trial.done("desk", compareVersions, { quoteId, from: 1, to: 2 });
    expect(forecast).toEqual([
      expect.stringMatching(/^Forecast: \d+–\d+ kW → \d+–\d+ kW\.$/),
      `Assumed: Spark retard at 60 kPa, ratio 11, 98 octane 14° where 11° is usual; Marek Oduya: “${spark.reason}”`,
    ]);
  });

  test("has none where the build changes no power", async () => {
    const buildId = await aBuild("stand-tall");
    const { quoteId } = await trial.done("desk", draftFromBuild, { buildId });
    const { shown } = await trial.done("desk", showQuote, { quoteId });
    expect(shown.forecast).toBeNull();
  });
});
