import { beforeAll, describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { changeItems } from "./change-items";
import { compareBuilds } from "./compare-builds";
import { copyBuild } from "./copy-build";
import { showSheet } from "./show-sheet";
import { startBuild } from "./start-build";

const trial = demoWorkshop();
let leftId = "";
let rightId = "";

async function set(buildId: string, ...codes: readonly string[]) {
  const { revision } = await trial.done("desk", showSheet, { buildId });
  const items = codes.map((code) => ({ code, quantity: 1 }));
  await trial.done("desk", changeItems, { buildId, revision, set: items, remove: [] });
}

beforeAll(async () => {
  const { vehicleId } = await aNewVehicle(trial);
  const build = { vehicleId, goal: "more pull in the middle", wantedBy: null, packageCode: null };
  leftId = (await trial.done("desk", startBuild, build)).id;
  await set(leftId, "blower-19-88", "charge-cooler");
  rightId = (await trial.done("desk", copyBuild, { buildId: leftId })).id;
});

test("a copy has its own number and the same choices, and changing it leaves the first as it is", async () => {
  const [left, right] = [
    await trial.done("desk", showSheet, { buildId: leftId }),
    await trial.done("desk", showSheet, { buildId: rightId }),
  ];
  expect(right.number).not.toBe(left.number);
  expect(right.chosen).toEqual(left.chosen);
  expect(left.siblings.map(({ id }) => id)).toEqual([rightId]);
  await set(rightId, "blower-24-92");
  expect((await trial.done("desk", showSheet, { buildId: leftId })).chosen).toEqual(left.chosen);
});

test("a build that is not there cannot be copied", async () => {
  const refusal = await trial.refused("desk", copyBuild, { buildId: newId() });
  expect(refusal.code).toBe("build-not-found");
});

describe("beside one another", () => {
  test("what differs is named, what is in both is said once, and price, forecast and chain stand for each", async () => {
    const { left, right, inBoth, links } = await trial.done("desk", compareBuilds, { leftId, rightId });
    expect(left.only.map(({ code }) => code)).toEqual(["blower-19-88"]);
    expect(right.only.map(({ code }) => code)).toEqual(["blower-24-92"]);
    expect(inBoth).toEqual(["Charge cooler kit, twin fan"]);
    expect(right.grossMinor).toBeGreaterThan(left.grossMinor);
    const pump = links.find(({ left: a }) => a?.link === "high-pressure-pump");
    expect([pump?.left?.met, pump?.right?.met]).toEqual([true, false]);
  });

  test("margin is shown to who may see it, and to nobody else", async () => {
    const desk = await trial.done("desk", compareBuilds, { leftId, rightId });
    expect([desk.left.margin, desk.right.margin]).toEqual([null, null]);
    const owner = await trial.done("owner", compareBuilds, { leftId, rightId });
    expect(owner.left.margin?.marginBasisPoints).toBeGreaterThan(0);
  });

  test("another workshop's build is no build here", async () => {
    const refusal = await trial.refused("gulfDesk", compareBuilds, { leftId, rightId });
    expect(refusal.code).toBe("build-not-found");
  });
});
