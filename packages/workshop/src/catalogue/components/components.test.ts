import { describe, expect, test } from "vitest";
import { catalogue } from "../../../../../prisma/demo/catalogue/catalogue";
import { componentOf } from "../../../../../prisma/demo/catalogue/item-component";
import { components, findComponent } from "./components";
import { figureFaults } from "./figure-faults";
import { readFigures } from "./read-figures";

const blower = {
  "blower.displacementLPerRev": "2.4",
  "blower.drive.crankPulleyMm": "175",
  "blower.drive.blowerPulleyMm": "92",
  "blower.drive.internalRatio": "1",
  "blower.maxSpeedRpm": "14,000",
  "blower.adiabaticEfficiency": "0.64",
  "blower.volumetricEfficiency": "1,500: 0.74, 3000: 0.88",
};

function read(code: string, typed: Readonly<Record<string, string>>) {
  const component = findComponent(code);
  if (!component) throw new Error(`no component ${code}`);
  return readFigures(component, typed);
}

describe("the figures of an item", () => {
  test("of the demo are all those of its component, which says what they are", () => {
    for (const item of catalogue.items) {
      expect(figureFaults(componentOf(item), item.figures), item.id).toEqual([]);
      expect(componentOf(item), `${item.id} is something`).not.toBe("");
    }
  });

  test("are read as they are typed, with separators and pairs", () => {
    expect(read("blower", blower)).toEqual({
      figures: {
        blower: {
          kind: "displacement",
          displacementLPerRev: 2.4,
          drive: { crankPulleyMm: 175, blowerPulleyMm: 92, internalRatio: 1 },
          maxSpeedRpm: 14_000,
          adiabaticEfficiency: 0.64,
          volumetricEfficiency: [
            { speedRpm: 1_500, value: 0.74 },
            { speedRpm: 3_000, value: 0.88 },
          ],
        },
      },
    });
    expect(read("gearbox-calibration", { "caps.0.torqueNm": "740" })).toEqual({
      figures: { caps: [{ id: "gearbox", name: "The gearbox calibration", torqueNm: 740 }] },
    });
    expect(read("suspension", {})).toEqual({ figures: {} });
  });

  test("that are missing, outside their limits or no figures are each said in a sentence", () => {
    const faultsOf = (change: Readonly<Record<string, string>>) => {
      const answer = read("blower", { ...blower, ...change });
      return "faults" in answer ? answer.faults.map(({ sentence }) => sentence) : [];
    };
    expect(faultsOf({ "blower.displacementLPerRev": "" })).toEqual([
      "Displacement: needed of every item that is “Blower, displacement”. Fill it in.",
    ]);
    expect(faultsOf({ "blower.displacementLPerRev": "24" })).toEqual([
      "Displacement: between 0.1 and 10 L/rev. Look at the unit.",
    ]);
    expect(faultsOf({ "blower.maxSpeedRpm": "fast" })).toEqual([
      "Fastest rotor: a number such as 1000 rpm is needed here.",
    ]);
    expect(faultsOf({ "blower.volumetricEfficiency": "3000: 0.88, 1500: 0.74" })).toEqual([
      "Volumetric efficiency: write the pairs in rising order, each once.",
    ]);
    expect(faultsOf({ "blower.volumetricEfficiency": "3000: 0.88: 2" })).toHaveLength(1);
    expect(
      read("tank-pump", { "fuelStages.0.points": "300: 450", "fuelStages.0.systemPressureKPa": "500" }),
    ).toEqual({
      faults: [{ path: "fuelStages.0.points", sentence: "Flow at pressure: two pairs or more are needed." }],
    });
    expect(read("fuel", { "burns.fuel": "kerosene" })).toHaveProperty("faults");
    expect(read("tyre", { "tyre.designation": "big" })).toHaveProperty("faults");
  });

  test("that another component has, or that are given by half, are refused", () => {
    expect(figureFaults("tyre", { blower: { kind: "displacement" } })).toHaveLength(1);
    expect(figureFaults("no-such", {})).toHaveLength(1);
    const half = {
      fuelStages: [
        {
          kind: "high-pressure-pump",
          displacementCm3PerCamRev: 1.5,
          volumetricEfficiency: 0.9,
          railPressure: { railKPa: 20_000 },
        },
      ],
    };
    expect(figureFaults("high-pressure-pump", half)).toHaveLength(1);
  });

  test("have one component each by code", () => {
    expect(new Set(components.map(({ code }) => code)).size).toBe(components.length);
  });
});
