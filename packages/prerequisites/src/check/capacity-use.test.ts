import { expect, test } from "vitest";
import type { Model } from "../model/model";
import { capacityUse } from "./capacity-use";

/** High-pressure fuel at 6,000 rpm, kg/h: invented figures of the demo workshop. */
const model: Model = {
  items: [{ id: "blower" }, { id: "pump-upgrade" }],
  rules: [
    {
      id: "high-pressure-fuel",
      kind: "capacity",
      quantity: "kg/h",
      base: 133,
      supply: { "pump-upgrade": 40 },
      demand: { blower: 146 },
      reservePct: 10,
      because: "at full load",
    },
  ],
};

test("the standard pump is asked 110 % and is short by 9 %; the upgrade leaves 18 % headroom", () => {
  const [standard] = capacityUse(model, ["blower"]);
  expect(standard).toMatchObject({ base: 133, supply: 133, demand: 146, met: false });
  expect(standard?.asked).toBeCloseTo(1.098, 3);
  expect(standard?.shortBy).toBeCloseTo(0.089, 3);

  const [upgraded] = capacityUse(model, ["blower", "pump-upgrade"]);
  expect(upgraded).toMatchObject({ supply: 173, met: true, shortBy: null });
  expect(upgraded?.headroom).toBeCloseTo(0.185, 3);
  expect(upgraded?.suppliers).toEqual([{ item: "pump-upgrade", amount: 40 }]);
  expect(upgraded?.demanders).toEqual([{ item: "blower", amount: 146 }]);
});

test("nothing asked leaves no headroom to speak of", () => {
  expect(capacityUse(model, [])).toEqual([
    expect.objectContaining({ asked: 0, headroom: null, shortBy: null, met: true }),
  ]);
});

test("enough supply without the reserve is not met, and not short either", () => {
  const [rule] = model.rules ?? [];
  const tight = { ...model, rules: rule ? [{ ...rule, base: 150 }] : [] } as Model;
  expect(capacityUse(tight, ["blower"])).toEqual([expect.objectContaining({ met: false, shortBy: null })]);
});
