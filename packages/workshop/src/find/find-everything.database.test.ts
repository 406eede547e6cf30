import { beforeAll, expect, test } from "vitest";
import { startBuild } from "../builds/start-build";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop, type Part } from "../testing/demo-workshop";
import { findEverything } from "./find-everything";

const trial = demoWorkshop();
let ids = { customerId: "", vehicleId: "" };
let build = { id: "", number: 0 };

beforeAll(async () => {
  ids = await aNewVehicle(trial);
  build = await trial.done("desk", startBuild, {
    vehicleId: ids.vehicleId,
    goal: "pull a van",
    wantedBy: null,
    packageCode: null,
  });
});

async function hits(q: string, who: Part = "desk") {
  const { groups } = await trial.done(who, findEverything, { q });
  return Object.fromEntries(groups.map(({ kind, hits: found }) => [kind, found.map(({ id }) => id)]));
}

test.each(["perpetua", "LINDQ", "lindqist", "0491 570 156", "570156"])("%s finds the customer", async (q) => {
  expect((await hits(q)).customer).toContain(ids.customerId);
});

test.each(["7XK 2QD", "7xk2qd", "7xk", "1M8GDM9AXKP042788", "p042788"])("%s finds the vehicle", async (q) => {
  expect((await hits(q)).vehicle).toContain(ids.vehicleId);
});

test("the number of a build finds it, with or without the word", async () => {
  expect((await hits(String(build.number))).build).toContain(build.id);
  expect((await hits(`build ${build.number}`)).build?.[0]).toBe(build.id);
});

test("a part is found by name and by maker", async () => {
  expect((await hits("charge cooler")).item?.length).toBeGreaterThan(0);
  expect((await hits("Vellis")).item?.length).toBeGreaterThan(0);
});

test("wildcards stand for themselves", async () => {
  expect((await hits("%")).customer).toBeUndefined();
  expect(await hits("_____")).toEqual({});
});

test("another workshop finds nothing of it", async () => {
  for (const q of ["lindqvist", "7XK2QD", "1M8GDM9AXKP042788"]) expect(await hits(q, "gulfDesk")).toEqual({});
});

test("at most eight of a kind are shown", async () => {
  const { groups } = await trial.done("desk", findEverything, { q: "a" });
  for (const group of groups) expect(group.hits.length).toBeLessThanOrEqual(8);
});

test("an unknown plate or VIN offers a new vehicle, a known one does not", async () => {
  const offers = async (q: string, who: Part = "desk") =>
    (await trial.done(who, findEverything, { q })).offers;
  expect(await offers("9zz 8yy")).toEqual([{ kind: "new-vehicle", plate: "9ZZ 8YY" }]);
  expect(await offers("1m8gdm9a9kp042799")).toEqual([{ kind: "new-vehicle", vin: "1M8GDM9A9KP042799" }]);
  expect(await offers("7xk 2qd")).toEqual([]);
  expect(await offers("Zebediah Quince")).toEqual([{ kind: "new-customer", name: "Zebediah Quince" }]);
  expect(await offers("9zz 8yy", "technician")).toEqual([]);
});

test("a name that is only like a known one is offered as a new customer, below the known one", async () => {
  const offers = async (q: string) => (await trial.done("desk", findEverything, { q })).offers;
  expect((await hits("Zebediah Lindqvist")).customer).toContain(ids.customerId);
  expect(await offers("Zebediah Lindqvist")).toEqual([{ kind: "new-customer", name: "Zebediah Lindqvist" }]);
  expect(await offers("lindqvist")).toEqual([]);
});

test("with nothing typed shows what was worked on last, and quotes only to those who read quotes", async () => {
  expect((await hits("")).build).toContain(build.id);
  expect((await hits("", "technician")).quote).toBeUndefined();
  expect((await hits("1001", "technician")).quote).toBeUndefined();
});

test("a search of a hundred and one characters is refused with a sentence", async () => {
  const refusal = await trial.refused("desk", findEverything, { q: "x".repeat(101) });
  expect(refusal).toMatchObject({ code: "invalid-input", field: "q" });
});
