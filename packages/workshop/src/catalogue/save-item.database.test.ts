import { describe, expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import { editPart } from "./edit-part";
import { publishVersion } from "./publish-version";
import { saveItem } from "./save-item";
import { startVersion } from "./start-version";

const workshop = await demoWorkshop();

const coldPlugs = {
  revision: 1,
  code: "",
  isNew: true,
  name: "Spark plugs three steps colder",
  system: "ignition-calibration",
  kind: "kit",
  component: "plugs",
  maker: "Vellis",
  supplier: "",
  note: "",
  price: "$1,220.50",
  cost: "88",
  leadDays: 3,
  massKg: 0,
  warrantyMonths: 12,
  returnable: true,
  oneUse: false,
  serialised: false,
  figures: {},
  fits: ["ridgewold-57"],
  operations: [],
};

async function drafted() {
  return workshop.done("manager", startVersion, { title: "Plugs" });
}

describe("an item from its form", () => {
  test("is drafted with a code from its name, its money exact, and sold once published", async () => {
    const { versionId } = await drafted();
    const saved = await workshop.done("manager", saveItem, { ...coldPlugs, versionId });
    expect(saved.code).toBe("spark-plugs-three-steps-colder");
    const shown = await workshop.done("owner", editPart, { versionId, part: "item", code: saved.code });
    expect(shown.content).toMatchObject({ priceMinor: 122_050, costMinor: 8_800, figures: {} });
    await workshop.done("owner", publishVersion, { versionId, revision: saved.revision });
    const again = await drafted();
    const taken = await workshop.refused("owner", saveItem, { ...coldPlugs, ...again });
    expect(taken.code).toBe("code-taken");
  });

  test("is refused at the field that is wrong", async () => {
    const { versionId } = await drafted();
    const tries = [
      [{ price: "dear" }, "amount-wrong", "price"],
      [{ cost: "1.234" }, "amount-wrong", "cost"],
      [{ component: "wing" }, "component-unknown", "component"],
      [
        { component: "octane-map", figures: { "burns.octaneNumber": "950" } },
        "figures-wrong",
        "figures.burns.octaneNumber",
      ],
      [{ leadDays: 1.5 }, "invalid-input", "leadDays"],
      [{ name: " " }, "invalid-input", "name"],
      [{ system: "" }, "invalid-input", "system"],
      [{ code: "Not a code" }, "invalid-input", "code"],
    ] as const;
    for (const [change, code, field] of tries) {
      const refusal = await workshop.refused("manager", saveItem, { ...coldPlugs, versionId, ...change });
      expect([refusal.code, refusal.field], field).toEqual([code, field]);
    }
    const unknown = { ...coldPlugs, versionId, isNew: false, code: "no-such" };
    expect((await workshop.refused("manager", saveItem, unknown)).code).toBe("part-unknown");
    const stale = { ...coldPlugs, versionId, revision: 7, name: "Hot plugs" };
    expect((await workshop.refused("manager", saveItem, stale)).code).toBe("stale");
    expect((await workshop.refused("desk", saveItem, { ...coldPlugs, versionId })).code).toBe("not-allowed");
  });
});
