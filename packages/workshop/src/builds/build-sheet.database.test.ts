import { beforeAll, describe, expect, test } from "vitest";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { changeItems } from "./change-items";
import { showSheet } from "./show-sheet";
import { startBuild } from "./start-build";

const trial = demoWorkshop();
let buildId = "";

const sheet = () => trial.done("desk", showSheet, { buildId });

/** Adds items one after another, as somebody at the sheet does. */
async function add(...codes: readonly string[]) {
  for (const code of codes) {
    const { revision } = await sheet();
    await trial.done("desk", changeItems, { buildId, revision, set: [{ code, quantity: 1 }], remove: [] });
  }
  return sheet();
}

beforeAll(async () => {
  const { vehicleId } = await aNewVehicle(trial);
  const build = await trial.done("desk", startBuild, {
    vehicleId,
    goal: "tow 3.0 t, more pull in the middle",
    wantedBy: "2026-12-18",
    packageCode: null,
  });
  buildId = build.id;
});

describe("with the 2.4 L blower and nothing else", () => {
  test("the standard high-pressure fuel pump cannot feed it, and is the weakest link of the fuel path", async () => {
    const { findings, capacities } = await add("blower-24-92");
    const short = findings.find(({ rule }) => rule === "high-pressure-fuel");
    // 1 − 133/146 of the catalogue's own figures: short by 9 %, trade figure, common practice, no source.
    expect(short).toMatchObject({ system: "fuel", safety: true, kind: "capacity" });
    expect(short?.headline).toBe("High-pressure fuel pump: short by 9 % (asked 146 of 133 kg/h)");
    expect(short?.because).toMatch(/rail droops/);
    expect(short?.source).toBe("common practice, no source");
    const link = capacities.find((each) => each.link === "high-pressure-pump");
    expect(link).toMatchObject({ supply: 133, demand: 146, met: false });
  });

  test("calibration, plugs, cooler kit and health check are missing, each with why and a fix that has price and hours", async () => {
    const { findings } = await sheet();
    for (const [rule, words] of [
      ["calibration-for-boost", "Boosted engine calibration"],
      ["plugs-for-high-boost", "Spark plugs two steps colder, set of 8"],
      ["cooler-for-boost", "Charge cooler kit, twin fan"],
      ["inspect-before-boost", "Pre-build inspection with baseline"],
    ] as const) {
      const finding = findings.find((each) => each.rule === rule);
      expect(finding?.headline).toContain(words);
      expect(finding?.because).not.toBe("");
      const [fix] = finding?.fixes ?? [];
      expect(fix?.labels).toContain("cheapest");
      expect(fix?.add.map(({ name }) => name)).toContain(words);
      expect(fix?.grossMinor).toBeGreaterThan(0);
      expect((fix?.labourHours ?? 0) + (fix?.dynoHours ?? 0)).toBeGreaterThan(0);
    }
  });

  test("the pump upgrade leaves 18 % headroom", async () => {
    const { findings } = await sheet();
    const fix = findings.find(({ rule }) => rule === "high-pressure-fuel")?.fixes[0];
    // (133 + 40) ÷ 146 − 1 of the catalogue's figures.
    expect(Math.round((fix?.headroomAfter ?? 0) * 100)).toBe(18);
  });

  test("a fix brings everything that it needs itself", async () => {
    const { findings } = await sheet();
    const fix = findings.find(({ rule }) => rule === "high-pressure-fuel")?.fixes[0];
    expect(fix?.add.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["hp-pump-upgrade", "hp-pipes-and-seals", "follower-check", "oil-service"]),
    );
  });
});

describe("the ledger", () => {
  test("counts the access work that blower and cooler share once, and says what that saves", async () => {
    const alone = await sheet();
    const both = await add("charge-cooler");
    const cooler = both.systems.flatMap(({ chosen }) => chosen).find(({ code }) => code === "charge-cooler");
    const added = both.ledger.labourHours - alone.ledger.labourHours;
    expect(added).toBeLessThan(cooler?.labourHours ?? 0);
    expect(both.ledger.savedHours).toBeCloseTo((cooler?.labourHours ?? 0) - added, 6);
  });

  test("adds parts and labour up to the total, tax once on the whole", async () => {
    const { ledger } = await sheet();
    const { total, parts, labour } = ledger;
    expect(total.grossMinor).toBe(parts.grossMinor + labour.grossMinor);
    expect(total.grossMinor).toBe(total.netMinor + total.taxMinor);
    // A tenth, rounded once on the total: GST Act 1999 (Cth) s 9-70 and s 9-90.
    expect(total.taxMinor).toBe(Math.round(total.netMinor / 10));
    const net = ledger.lines.reduce((sum, line) => sum + Number(line.quantity) * line.unitPriceMinor, 0);
    expect(total.netMinor).toBe(Math.round(net));
  });

  test("waits for the slowest part that is not in stock", async () => {
    const { ledger, partsBy, today } = await sheet();
    expect(today).toBe("2026-11-25");
    expect(ledger.leadDays).toBe(12);
    expect(partsBy).toBe("2026-12-07");
  });
});

describe("a choice that clashes", () => {
  test("is greyed with the reason, and refused with it", async () => {
    const { systems, revision } = await sheet();
    const winch = systems.flatMap(({ choices }) => choices).find(({ code }) => code === "high-mount-winch");
    expect(winch?.obstacle?.because).toMatch(/cooler stack/);
    expect(winch?.obstacle?.goes.map(({ code }) => code)).toEqual(["blower-24-92", "charge-cooler"]);
    const refusal = await trial.refused("desk", changeItems, {
      buildId,
      revision,
      set: [{ code: "high-mount-winch", quantity: 1 }],
      remove: [],
    });
    expect(refusal.code).toBe("item-excluded");
    expect(refusal.sentence).toMatch(/cooler stack/);
  });

  test("is taken when what stands in its way goes with the same press, and the way back is kept", async () => {
    const { revision, chosen } = await sheet();
    const change = { buildId, set: [{ code: "high-mount-winch", quantity: 1 }], remove: ["blower-24-92"] };
    const changed = await trial.done("desk", changeItems, { ...change, revision });
    const codes = (await sheet()).chosen.map(({ code }) => code);
    expect(codes).toContain("high-mount-winch");
    expect(codes).not.toContain("blower-24-92");
    await trial.done("desk", changeItems, { buildId, revision: changed.revision, ...changed.undo });
    expect((await sheet()).chosen.map(({ code }) => code).toSorted()).toEqual(
      chosen.map(({ code }) => code).toSorted(),
    );
  });

  test("another blower takes the place of the first", async () => {
    const { systems } = await sheet();
    const small = systems.flatMap(({ choices }) => choices).find(({ code }) => code === "blower-19-88");
    expect(small?.replaces).toEqual(["Blower kit 2.4 L/rev, 92 mm pulley"]);
    const after = await add("blower-19-88");
    expect(after.chosen.map(({ code }) => code)).not.toContain("blower-24-92");
    const pump = after.capacities.find(({ link }) => link === "high-pressure-pump");
    expect(pump?.met).toBe(true);
  });
});

test("a trailer above two tonnes asks for its brakes to be worked from the driver's seat, whatever was chosen", async () => {
  const { vehicleId } = await aNewVehicle(trial, { vin: "7Z9TRALER0T000001", trailerGtmKg: 2_700 });
  const build = await trial.done("desk", startBuild, {
    vehicleId,
    goal: "tow a van",
    wantedBy: null,
    packageCode: null,
  });
  const { findings } = await trial.done("desk", showSheet, { buildId: build.id });
  expect(findings.find(({ rule }) => rule === "fit-out-for-heavy-trailer")).toMatchObject({ safety: true });
});
