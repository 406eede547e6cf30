import { describe, expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import { changePart } from "./change-part";
import { publishVersion } from "./publish-version";
import { readCatalogueState } from "./read-catalogue-state";
import { startVersion } from "./start-version";

const workshop = await demoWorkshop();

async function item(code: string) {
  const context = await workshop.as("owner");
  if (context.actor.kind !== "person") throw new Error("the owner is a person");
  const state = await context.database.inWorkshop(context.actor.workshopId, (tx) => readCatalogueState(tx));
  return state.parts.item.get(code);
}

async function drafted(title: string) {
  const { versionId } = await workshop.done("manager", startVersion, { title });
  return versionId;
}

describe("a version of the catalogue", () => {
  test("changes nothing until it is published, and then everything at once", async () => {
    const before = await item("charge-cooler");
    if (!before) throw new Error("the demo sells a charge cooler");
    const versionId = await drafted("Dearer cooler");
    const after = { ...before, priceMinor: before.priceMinor + 10_000 };
    const change = { versionId, part: "item", code: "charge-cooler", after };
    await workshop.done("manager", changePart, { ...change, revision: 1 });
    expect(await item("charge-cooler")).toEqual(before);
    await workshop.done("owner", publishVersion, { versionId, revision: 2 });
    expect(await item("charge-cooler")).toEqual(after);
    expect((await workshop.refused("owner", changePart, { ...change, revision: 3 })).code).toBe(
      "version-published",
    );
  });

  test("is not published over a change that came in between", async () => {
    const before = await item("belt-8-rib");
    const [first, second] = [await drafted("First"), await drafted("Second")];
    for (const [versionId, leadDays] of [
      [first, 31],
      [second, 32],
    ] as const)
      await workshop.done("manager", changePart, {
        versionId,
        revision: 1,
        part: "item",
        code: "belt-8-rib",
        after: { ...before, leadDays },
      });
    await workshop.done("manager", publishVersion, { versionId: first, revision: 2 });
    const refusal = await workshop.refused("manager", publishVersion, { versionId: second, revision: 2 });
    expect(refusal.code).toBe("overtaken");
  });

  test("is not published while a rule points at an item that it takes away", async () => {
    const versionId = await drafted("No more pump");
    const change = { versionId, revision: 1, part: "item", code: "hp-pump-upgrade", after: null };
    await workshop.done("manager", changePart, change);
    const refusal = await workshop.refused("manager", publishVersion, { versionId, revision: 2 });
    expect(refusal.code).toBe("points-nowhere");
  });

  test("is for manager and owner only", async () => {
    expect((await workshop.refused("desk", startVersion, { title: "Mine" })).code).toBe("not-allowed");
    expect((await workshop.refused("technician", startVersion, { title: "Mine" })).code).toBe("not-allowed");
  });

  test("refuses an empty draft, an unknown part and a code in use", async () => {
    const versionId = await drafted("Odds and ends");
    const empty = await workshop.refused("owner", publishVersion, { versionId, revision: 1 });
    expect(empty.code).toBe("nothing-changed");
    const after = await item("belt-8-rib");
    const change = { versionId, revision: 1, part: "item", after };
    expect((await workshop.refused("owner", changePart, { ...change, code: "no-such" })).code).toBe(
      "part-unknown",
    );
    const taken = await workshop.refused("owner", changePart, { ...change, code: "belt-8-rib", isNew: true });
    expect(taken.code).toBe("code-taken");
    const same = await workshop.refused("owner", changePart, { ...change, code: "belt-8-rib" });
    expect(same.code).toBe("part-unchanged");
  });

  test("the database itself keeps what was published", async () => {
    await expect(
      workshop.sql("update catalogue_version set title = 'other' where state = 'published'"),
    ).rejects.toThrow(/published_catalogue_is_final/);
    await expect(workshop.sql("delete from catalogue_change")).rejects.toThrow(
      /published_catalogue_is_final/,
    );
  });
});
