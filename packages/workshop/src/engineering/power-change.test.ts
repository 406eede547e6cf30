import { describe, expect, test } from "vitest";
import { demoModelFigures } from "../testing/demo-forecast";
import { type ChosenFigures, powerChange } from "./power-change";
import { modelFigures } from "./stored-figures";

const model = modelFigures.parse(demoModelFigures("ridgewold-57"));
const on98 = { fuelKind: "petrol", fuelOctane: 98 } as const;
const chosen = (code: string, figures: ChosenFigures["figures"]): ChosenFigures => ({
  code,
  name: code,
  figures,
});

const portInjectors = {
  kind: "port-injectors",
  count: 8,
  staticFlowCm3PerMin: 280,
  ratedPressureKPa: 300,
  railKPa: 400,
  manifoldKPa: 64,
  dutyLimit: 0.85,
} as const;

describe("the fuel system with its upgrades", () => {
  const kinds = (...items: ChosenFigures[]) => powerChange(model, items, on98).stages.map(({ kind }) => kind);

  test("a stage takes the place of the standard one of its kind", () => {
    const larger = {
      kind: "high-pressure-pump",
      displacementCm3PerCamRev: 1.533,
      volumetricEfficiency: 0.85,
    } as const;
    const { stages } = powerChange(model, [chosen("pump", { fuelStages: [larger] })], on98);
    expect(stages).toHaveLength(model.fuel.stages.length);
    expect(stages[1]).toBe(larger);
  });

  test("a stage that the vehicle lacks is added once, beside the direct injectors", () => {
    const kit = chosen("kit", { fuelStages: [portInjectors] });
    expect(kinds(kit, kit)).toEqual([
      "tank-pump",
      "high-pressure-pump",
      "direct-injectors",
      "port-injectors",
    ]);
    expect(powerChange(model, [kit], on98).injection).toBe("port-direct");
  });
});

describe("the charge cooler", () => {
  const cooler = { effectiveness: 0.72, coolantOverAmbientC: 20, pressureDropKPa: 5 };
  const better = { effectiveness: 0.85, coolantOverAmbientC: 12, pressureDropKPa: 5, needs: "cooler" };

  test("improved by a kit counts only with the cooler that the kit belongs to", () => {
    const kit = chosen("kit", { chargeCooler: better });
    expect(powerChange(model, [kit], on98).chargeCooler).toBeNull();
    expect(powerChange(model, [kit, chosen("cooler", { chargeCooler: cooler })], on98).chargeCooler).toEqual(
      better,
    );
  });
});

describe("a pulley of its own", () => {
  const kit = {
    kind: "displacement",
    displacementLPerRev: 2.4,
    volumetricEfficiency: 0.92,
    adiabaticEfficiency: 0.64,
    maxSpeedRpm: 14_000,
    drive: { crankPulleyMm: 175, blowerPulleyMm: 92, internalRatio: 1 },
  } as const;
  const drive = { ...kit.drive, blowerPulleyMm: 98 };
  const pulley = chosen("pulley", { blower: { ...kit, drive, needs: "kit" } });

  test("turns the blower it belongs to, and makes none without it", () => {
    expect(powerChange(model, [chosen("kit", { blower: kit }), pulley], on98).blower).toEqual({
      ...kit,
      drive,
    });
    expect(powerChange(model, [pulley], on98).blower).toBeNull();
  });
});

describe("torque limits", () => {
  test("a calibration replaces the limit of its kind and adds that of the low gears", () => {
    const caps = [
      { id: "gearbox", name: "Calibration", torqueNm: 740 },
      { id: "low", name: "Calibration", torqueNm: 680, gears: [1, 2, 3] },
    ];
    expect(powerChange(model, [chosen("calibration", { caps })], on98).caps).toEqual(caps);
  });
});

describe("the fuel in the tank", () => {
  test("is what the customer buys, unless an item says otherwise", () => {
    expect(powerChange(model, [], { fuelKind: "e10", fuelOctane: null }).fuel).toBe("E10");
    expect(powerChange(model, [chosen("duty", { burns: { fuel: "E85" } })], on98).fuel).toBe("E85");
  });

  test("a map for 95 holds the engine to 95, whatever is bought", () => {
    const map = chosen("map", { burns: { octaneNumber: 95 } });
    expect(powerChange(model, [map], on98).assume.octaneNumber).toBe(95);
    expect(powerChange(model, [], on98).assume.octaneNumber).toBe(98);
  });
});
