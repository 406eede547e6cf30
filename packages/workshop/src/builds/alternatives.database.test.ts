import { beforeEach, describe, expect, test } from "vitest";
import { aNewVehicle } from "../testing/a-new-vehicle";
import { demoWorkshop } from "../testing/demo-workshop";
import { changeItems } from "./change-items";
import { findAlternatives } from "./find-alternatives";
import { showSheet } from "./show-sheet";
import { startBuild } from "./start-build";

const trial = demoWorkshop();
let buildId = "";
let vin = 0;

async function startOn(different: Readonly<Record<string, unknown>> = {}): Promise<void> {
  vin += 1;
  const { vehicleId } = await aNewVehicle(trial, { vin: `7Z9ALTERN0T00000${vin}`, ...different });
  const goal = "tow 3.0 t, more pull in the middle";
  const build = await trial.done("desk", startBuild, { vehicleId, goal, wantedBy: null, packageCode: null });
  buildId = build.id;
}

async function set(...codes: readonly string[]) {
  const { revision } = await trial.done("desk", showSheet, { buildId });
  const items = codes.map((code) => ({ code, quantity: 1 }));
  await trial.done("desk", changeItems, { buildId, revision, set: items, remove: [] });
}

const sheet = () => trial.done("desk", showSheet, { buildId });

async function alternatives(signal = new AbortController().signal) {
  const found = await findAlternatives(await trial.as("desk"), { buildId }, signal);
  if (!found.ok) throw new Error(found.refusal.sentence);
  return found.value;
}

describe("with the 2.4 L blower and nothing else", () => {
  beforeEach(async () => {
    await startOn();
    await set("blower-24-92");
  });

  test("the cheapest completion is proven, leaves nothing open, and costs what it says", async () => {
    const { alternatives: found, clash, leavesOpen, revision } = await alternatives();
    expect({ clash, leavesOpen }).toEqual({ clash: null, leavesOpen: [] });
    const cheapest = found.find(({ bestFor }) => bestFor.includes("price"));
    expect(cheapest?.isProven).toBe(true);
    const codes = cheapest?.offer.add.map(({ code }) => ({ code, quantity: 1 })) ?? [];
    await trial.done("desk", changeItems, { buildId, revision, set: codes, remove: [] });
    const after = await sheet();
    expect(after.findings).toEqual([]);
    expect(after.ledger.total.grossMinor).toBe(cheapest?.grossMinor);
    expect(after.ledger.labourHours).toBe(cheapest?.labourHours);
    expect(after.partsBy).toBe(cheapest?.partsBy);
  });

  test("none of those shown is worse than another in price, hours and date at once", async () => {
    const { alternatives: found } = await alternatives();
    const hours = (each: (typeof found)[number]) => each.labourHours + each.dynoHours;
    for (const one of found)
      for (const other of found.filter((each) => each !== one))
        expect(
          one.grossMinor < other.grossMinor || hours(one) < hours(other) || one.leadDays < other.leadDays,
        ).toBe(true);
    expect(found.flatMap(({ bestFor }) => bestFor).toSorted()).toEqual(["hours", "leadDays", "price"]);
  });

  test("what is called proven without the search is what the search proves", async () => {
    const gone = new AbortController();
    gone.abort();
    const { alternatives: found, isAnswered } = await alternatives(gone.signal);
    expect(isAnswered).toBe(found.length > 0);
    const { alternatives: searched } = await alternatives();
    expect(searched.map(({ isProven }) => isProven)).not.toContain(false);
    for (const each of found.filter(({ isProven }) => isProven)) expect(searched).toContainEqual(each);
  });
});

describe("with a blower on a vehicle that is run on petrol 91", () => {
  beforeEach(async () => {
    await startOn({ fuelOctane: 91 });
    await set("blower-24-92");
  });

  test("the clash names the blower and the fuel, and what would be possible without the blower", async () => {
    const { clash } = await alternatives();
    expect(clash?.members.map(({ code }) => code)).toEqual(["blower-24-92"]);
    expect(clash?.reasons.map(({ rule }) => rule)).toEqual(["octane-98"]);
    expect(clash?.remedies[0]?.place).toBe("vehicle");
    const [blower] = clash?.members ?? [];
    expect(blower?.without?.remove.map(({ code }) => code)).toEqual(["blower-24-92"]);
    expect(blower?.without?.grossMinor).toBeLessThan(0);
  });

  test("the rest can be completed, and what stays open is said", async () => {
    const { alternatives: found, leavesOpen } = await alternatives();
    expect(leavesOpen).toEqual([expect.stringMatching(/calibrated for 98/)]);
    expect(found[0]?.offer.add.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["charge-cooler", "boost-calibration", "hp-pump-upgrade"]),
    );
  });
});
