import { beforeAll, describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { findGoalWays, readForGoal } from "./find-goal-ways";
import { showSheet } from "./show-sheet";
import { startBuild } from "./start-build";

const trial = demoWorkshop();
const nothing = { powerKw: null, towKg: null, by: null, budgetMinor: null };
let vehicleId = "";

async function ways(goal: Partial<typeof nothing> | Readonly<Record<string, unknown>>) {
  const found = await findGoalWays(await trial.as("desk"), { vehicleId, ...nothing, ...goal });
  if (!found.ok) throw new Error(found.refusal.sentence);
  return found.value;
}

beforeAll(async () => {
  ({ vehicleId } = await aNewVehicle(trial));
});

describe("at least 300 kW at the hubs and a 3 t trailer", () => {
  const goal = { powerKw: 300, towKg: 3_000 };

  test("what meets it stands first, and each way that does not says by how much", async () => {
    const { ways: found } = await ways(goal);
    const [best] = found;
    expect(best?.misses).toEqual([]);
    expect(best?.power?.expected).toBeGreaterThanOrEqual(300);
    const firstMiss = found.findIndex(({ misses }) => misses.length > 0);
    expect(found.slice(firstMiss).every(({ misses }) => misses.length > 0)).toBe(true);
    const miss = found[firstMiss]?.misses[0];
    expect(miss).toEqual({ kind: "power", byKw: Math.ceil(300 - (found[firstMiss]?.power?.expected ?? 0)) });
  });

  test("a build started from the best has nothing missing and costs what was said", async () => {
    const [best] = (await ways(goal)).ways;
    if (!best) throw new Error("nothing was found");
    const { id } = await trial.done("desk", startBuild, {
      vehicleId,
      goal: "300 kW and a 3 t trailer",
      wantedBy: null,
      packageCode: best.packageCode,
      picked: best.picked,
      items: best.items,
    });
    const { findings, ledger, chosen, forecast } = await trial.done("desk", showSheet, { buildId: id });
    expect(findings).toEqual([]);
    expect(ledger.total.grossMinor).toBe(best.grossMinor);
    expect(chosen.map(({ code }) => code)).toContain("tow-3000");
    expect(forecast.kind === "forecast" && forecast.power.expected).toBe(best.power?.expected);
  });
});

test("the packages of the model are among the ways, each selection once", async () => {
  const { ways: found } = await ways({ powerKw: 300 });
  expect(found.map(({ packageCode }) => packageCode)).toContain("long-grade-24");
  const selections = found.map(({ items }) => items.toSorted().join(" "));
  expect(new Set(selections).size).toBe(selections.length);
});

test("a small budget and a near day are missed by what is said", async () => {
  const { ways: found } = await ways({ powerKw: 320, by: "2026-11-27", budgetMinor: 500_000 });
  const over = found.flatMap(({ grossMinor, misses }) =>
    misses.flatMap((miss) => (miss.kind === "budget" ? [{ grossMinor, byMinor: miss.byMinor }] : [])),
  );
  expect(over.length).toBeGreaterThan(0);
  for (const { grossMinor, byMinor } of over) expect(byMinor).toBe(grossMinor - 500_000);
});

describe("is refused", () => {
  test("when nothing is asked", async () => {
    const refusal = await trial.refused("desk", readForGoal, { vehicleId, ...nothing });
    expect(refusal.code).toBe("goal-empty");
  });

  test("when the day has passed", async () => {
    const refusal = await trial.refused("desk", readForGoal, { vehicleId, ...nothing, by: "2026-01-01" });
    expect(refusal.code).toBe("wanted-by-past");
  });

  test("when no towing duty is as heavy as the trailer", async () => {
    const refusal = await trial.refused("desk", readForGoal, { vehicleId, ...nothing, towKg: 9_000 });
    expect(refusal.code).toBe("goal-tow-too-heavy");
  });

  test("for a vehicle that is not there", async () => {
    const refusal = await trial.refused("desk", readForGoal, {
      ...nothing,
      vehicleId: newId(),
      powerKw: 300,
    });
    expect(refusal.code).toBe("vehicle-not-found");
  });

  test("when a build is started with an item that is unknown, or does not fit", async () => {
    const build = { vehicleId, goal: "what was found", wantedBy: null, packageCode: null };
    const unknown = await trial.refused("desk", startBuild, {
      ...build,
      picked: [],
      items: ["no-such-item"],
    });
    expect(unknown.code).toBe("item-unknown");
    const stray = await trial.refused("desk", startBuild, {
      ...build,
      picked: [],
      items: ["blower-19-gt44"],
    });
    expect(stray.code).toBe("item-does-not-fit");
  });
});
