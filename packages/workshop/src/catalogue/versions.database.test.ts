import { describe, expect, test } from "vitest";
import type { UseCase } from "../core/use-case";
import { demoWorkshop } from "../testing/demo-workshop";
import { changePart } from "./change-part";
import { editPart } from "./edit-part";
import { discardVersion, renameVersion } from "./edit-version";
import { goBack } from "./go-back";
import { listCatalogue } from "./list-catalogue";
import { listVersions } from "./list-versions";
import type { ContentOf } from "./part-content";
import { publishVersion } from "./publish-version";
import { keepChange, undoChange } from "./settle-change";
import { showPart } from "./show-part";
import { showVersion } from "./show-version";
import { startVersion } from "./start-version";

const workshop = await demoWorkshop();
const nobody = "00000000-0000-7000-8000-000000000000";

async function drafted(title: string) {
  const { versionId } = await workshop.done("manager", startVersion, { title });
  return versionId;
}

/** A draft that gives an item another price, and the revision it then has. */
async function priced(code: string, addMinor: number, title = "Another price") {
  const versionId = await drafted(title);
  const { content } = await workshop.done("manager", editPart, { versionId, part: "item", code });
  const item = content as ContentOf<"item">; // Asked for as an item.
  const after = { ...item, priceMinor: item.priceMinor + addMinor };
  await workshop.done("manager", changePart, { versionId, revision: 1, part: "item", code, after });
  return { versionId, before: item.priceMinor };
}

const priceOf = async (code: string) => {
  const { lines } = await workshop.done("desk", listCatalogue, { search: code });
  return lines.find((line) => line.code === code)?.priceMinor;
};

describe("the catalogue", () => {
  test("is found by words, system, component and vehicle", async () => {
    const found = await workshop.done("technician", listCatalogue, {
      search: "pump upgrade",
      system: "fuel",
      component: "high-pressure-pump",
      model: "ridgewold-57",
    });
    expect(found.lines.map(({ code }) => code)).toEqual(["hp-pump-upgrade"]);
    const other = await workshop.done("desk", listCatalogue, { search: "pump", model: "vale-30td" });
    expect(other.lines.map(({ code }) => code)).not.toContain("hp-pump-upgrade");
    const rules = await workshop.done("desk", listCatalogue, { part: "rule", search: "high-pressure" });
    expect(rules.lines.length).toBeGreaterThan(0);
    expect(rules.lines.every(({ name }) => name.endsWith("."))).toBe(true);
  });

  test("shows what a part is, and what it costs only to those who may see margins", async () => {
    const asked = { part: "item", code: "hp-pump-upgrade" };
    const labels = (said: readonly { label: string }[]) => said.map(({ label }) => label);
    expect(labels((await workshop.done("manager", showPart, asked)).said)).toContain("Cost");
    const desk = await workshop.done("desk", showPart, asked);
    expect(labels(desk.said)).not.toContain("Cost");
    expect(labels(desk.said)).toContain("Delivers per turn of the cam");
    const nothing = await workshop.refused("desk", showPart, { part: "rule", code: "hp-pump-upgrade" });
    expect(nothing.code).toBe("part-not-found");
  });
});

describe("a draft", () => {
  test("says in words what it changes, and the part remembers it", async () => {
    const { versionId } = await priced("cat-back-exhaust", 5_000, "Dearer exhaust");
    const draft = await workshop.done("desk", showVersion, { versionId });
    expect(draft.changes).toMatchObject([{ kind: "changed", code: "cat-back-exhaust", theirs: null }]);
    expect(draft.changes[0]?.differences.map(({ label }) => label)).toEqual(["Price without tax"]);
    await workshop.done("owner", publishVersion, { versionId, revision: 2 });
    const part = await workshop.done("desk", showPart, { part: "item", code: "cat-back-exhaust" });
    expect(part.history[0]).toMatchObject({ title: "Dearer exhaust", state: "published" });
    const { versions } = await workshop.done("desk", listVersions, {});
    expect(versions.map(({ title }) => title)).toContain("Dearer exhaust");
  });

  test("is renamed, has a change undone, and is thrown away", async () => {
    const { versionId } = await priced("dark-trim", 100);
    await workshop.done("manager", renameVersion, { versionId, revision: 2, title: "Trim" });
    const change = { versionId, revision: 3, part: "item", code: "dark-trim" };
    await workshop.done("manager", undoChange, change);
    expect((await workshop.done("manager", showVersion, { versionId })).changes).toEqual([]);
    const again = await workshop.refused("manager", undoChange, { ...change, revision: 4 });
    expect(again.code).toBe("change-not-found");
    const kept = await workshop.refused("manager", keepChange, { ...change, revision: 4 });
    expect(kept.code).toBe("change-not-found");
    const stale = await workshop.refused("manager", renameVersion, { versionId, revision: 3, title: "X" });
    expect(stale.code).toBe("stale");
    expect((await workshop.refused("manager", discardVersion, { versionId, revision: 1 })).code).toBe(
      "stale",
    );
    await workshop.done("manager", discardVersion, { versionId, revision: 4 });
    expect((await workshop.refused("manager", showVersion, { versionId })).code).toBe("version-not-found");
  });

  test("that was overtaken says what became of the part, and keeps or drops its own", async () => {
    const mine = await priced("front-bar", 1_000);
    const theirs = await priced("front-bar", 2_000);
    await workshop.done("manager", publishVersion, { versionId: theirs.versionId, revision: 2 });
    const { versionId } = mine;
    const refusal = await workshop.refused("manager", publishVersion, { versionId, revision: 2 });
    expect(refusal.code).toBe("overtaken");
    const shown = await workshop.done("manager", showVersion, { versionId });
    expect(shown.changes[0]?.theirs).toHaveLength(1);
    const change = { versionId, revision: 2, part: "item", code: "front-bar" };
    await workshop.done("manager", keepChange, change);
    await workshop.done("manager", publishVersion, { versionId, revision: 3 });
    expect(await priceOf("front-bar")).toBe(mine.before + 1_000);
  });

  test("is for manager and owner to write, and not to be found elsewhere", async () => {
    const { versionId } = await priced("dark-trim", 300);
    const change = { versionId, revision: 2, part: "item", code: "dark-trim" };
    const tries: readonly (readonly [UseCase, object])[] = [
      [undoChange, change],
      [keepChange, change],
      [renameVersion, { versionId, revision: 2, title: "Mine" }],
      [discardVersion, { versionId, revision: 2 }],
      [goBack, { number: 0 }],
      [editPart, { versionId, part: "item", code: "dark-trim" }],
    ];
    for (const [useCase, input] of tries)
      expect((await workshop.refused("desk", useCase, input)).code, useCase.name).toBe("not-allowed");
    for (const useCase of [undoChange, keepChange])
      expect((await workshop.refused("gulfOwner", useCase, change)).code).toBe("version-not-found");
    const elsewhere = { versionId: nobody, part: "item", code: "dark-trim" };
    expect((await workshop.refused("owner", editPart, elsewhere)).code).toBe("version-not-found");
    const unknown = { versionId, part: "item", code: "no-such-thing" };
    expect((await workshop.refused("owner", editPart, unknown)).code).toBe("part-not-found");
  });

  test("refuses figures that the engineering could not use", async () => {
    const versionId = await drafted("Half a blower");
    const code = "blower-24-92";
    const { content } = await workshop.done("manager", editPart, { versionId, part: "item", code });
    const after = { ...content, figures: {} };
    const change = { versionId, revision: 1, part: "item", code, after };
    expect((await workshop.refused("manager", changePart, change)).code).toBe("figures-wrong");
  });
});

describe("going back", () => {
  test("is a draft of its own that undoes what later versions changed", async () => {
    const before = await priceOf("driving-lamps");
    const { versionId } = await priced("driving-lamps", 700);
    const { number } = await workshop.done("owner", publishVersion, { versionId, revision: 2 });
    const back = await workshop.done("owner", goBack, { number: number - 1 });
    expect(await priceOf("driving-lamps")).not.toBe(before);
    await workshop.done("owner", publishVersion, { versionId: back.versionId, revision: 1 });
    expect(await priceOf("driving-lamps")).toBe(before);
    expect((await workshop.refused("owner", editPart, { versionId, part: "item", code: "x" })).code).toBe(
      "version-published",
    );
    const again = await workshop.refused("owner", goBack, { number: number - 1 });
    expect(again.code).toBe("nothing-to-undo");
    expect((await workshop.refused("owner", goBack, { number: 999 })).code).toBe("version-not-found");
  });
});
