import { describe, expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import { copyPackage, planCopy } from "./copy-package";
import { publishVersion } from "./publish-version";
import { savePackage } from "./save-package";
import { listPackages, showPackage } from "./show-package";

const workshop = demoWorkshop();
const nothing = { versionId: null, revision: 1 };

const show = (code: string, versionId: string | null = null) =>
  workshop.done("manager", showPackage, { code, versionId });

async function contentOf(code: string) {
  const { position: _, ...content } = (await show(code)).content;
  return content;
}

describe("a package", () => {
  test("is worked out on every vehicle it is for: price, margin, findings and promise", async () => {
    const { vehicles } = await show("long-grade-24");
    expect(vehicles.map(({ modelCode }) => modelCode)).toContain("ridgewold-57");
    for (const { ledger, margin, promise, doesNotFit } of vehicles) {
      expect(ledger.total.netMinor).toBeGreaterThan(margin.costMinor);
      expect(promise.stands).toBe("kept");
      expect(doesNotFit).toEqual([]);
    }
  });

  test("that promises more than its forecast says so, and names what is missing", async () => {
    const content = await contentOf("long-grade-24");
    const promise = { ...content.promise, at: "hubs", lowKw: 500, highKw: 520, boostKPa: 60, towKg: 2000 };
    const items = content.items.filter((code) => code !== "hp-pump-upgrade");
    const input = { ...nothing, code: "long-grade-24", ...content, items, promise };
    const { versionId } = await workshop.done("manager", savePackage, input);
    const { vehicles, content: drafted } = await show("long-grade-24", versionId);
    expect(drafted.promise).toMatchObject({ lowKw: 500, boostKPa: 60, towKg: 2000 });
    expect(vehicles[0]?.promise.stands).toBe("not-kept");
    expect(vehicles[0]?.findings.length).toBeGreaterThan(0);
    // As it stands it is untouched.
    expect((await show("long-grade-24")).vehicles[0]?.promise.stands).toBe("kept");
  });

  test("is written anew, with choices and a mass to tow, and sold once it is published", async () => {
    const content = await contentOf("tow-ready");
    const choices = [{ name: "Fuel blend", pick: "at-most-one", items: ["runs-on-e10", "runs-on-e85"] }];
    const made = { ...nothing, code: null, ...content, name: "Tow More", choices, promise: { towKg: 3000 } };
    const { versionId, code } = await workshop.done("manager", savePackage, made);
    expect(code).toBe("tow-more");
    await workshop.done("owner", publishVersion, { versionId, revision: 2 });
    const { packages } = await workshop.done("owner", listPackages, { versionId: null });
    expect(packages.find((each) => each.code === code)).toMatchObject({
      choices: 1,
      promise: { towKg: 3000 },
    });
    const taken = await workshop.refused("manager", savePackage, made);
    expect(taken.code).toBe("code-taken");
  });

  test("is refused empty, with an empty choice, or with half a promise", async () => {
    const content = await contentOf("tow-ready");
    const save = (different: object) =>
      workshop.refused("manager", savePackage, { ...nothing, code: "tow-ready", ...content, ...different });
    expect((await save({ items: [], choices: [] })).code).toBe("package-empty");
    const choices = [{ name: "Plugs", pick: "exactly-one", items: [] }];
    expect((await save({ choices })).code).toBe("package-choice-empty");
    const half = await save({ promise: { at: "hubs", lowKw: 300 } });
    expect(half.sentence).toMatch(/^A promise of power says/);
    const turned = await save({
      promise: { at: "hubs", lowKw: 320, highKw: 300, referenceCondition: "98", remedy: "Money back." },
    });
    expect(turned.sentence).toMatch(/high end .* not below its low end/);
    expect(
      (await save({ models: ["ridgewold-57"], versionId: "00000000-0000-7000-8000-000000000000" })).code,
    ).toBe("version-not-found");
  });
});

describe("a package copied to another vehicle", () => {
  const copy = { code: "long-haul-19", modelCode: "orrismere-gt44", versionId: null, replacements: {} };

  test("says what does not carry over, proposes the same component, and does not promise what is not forecast", async () => {
    const plan = await workshop.done("manager", planCopy, copy);
    const blower = plan.missing.find(({ code }) => code === "blower-19-88");
    expect(blower?.proposals.map(({ code }) => code)).toContain("blower-19-gt44");
    expect(plan.carried).toBeGreaterThan(0);
    expect(plan.on.doesNotFit).toEqual([]);
    const replacements = { "blower-19-88": "blower-19-gt44" };
    const made = { ...copy, replacements, revision: 1, name: "Long Haul GT" };
    const { versionId, code } = await workshop.done("manager", copyPackage, made);
    const { content, vehicles } = await show(code, versionId);
    expect(content.models).toEqual(["orrismere-gt44"]);
    expect(content.items).toContain("blower-19-gt44");
    expect(vehicles[0]?.doesNotFit).toEqual([]);
    expect(vehicles[0]?.promise.stands).not.toBe("not-kept");
  });

  test("is refused with a part that does not fit or does not exist, and where it is made for it already", async () => {
    const made = { ...copy, revision: 1, name: "Wrong" };
    const unfit = { ...made, replacements: { "blower-19-88": "blower-24-92" } };
    expect((await workshop.refused("manager", copyPackage, unfit)).code).toBe("copy-does-not-fit");
    const unknown = { ...made, replacements: { "blower-19-88": "no-such" } };
    expect((await workshop.refused("manager", copyPackage, unknown)).code).toBe("part-unknown");
    const there = await workshop.refused("manager", planCopy, { ...copy, modelCode: "ridgewold-57" });
    expect(there.code).toBe("copy-there-already");
    expect((await workshop.refused("manager", planCopy, { ...copy, modelCode: "no-such" })).code).toBe(
      "model-unknown",
    );
    expect((await workshop.refused("manager", planCopy, { ...copy, code: "no-such" })).code).toBe(
      "package-not-found",
    );
  });

  test("is for manager and owner only, and of one workshop", async () => {
    for (const part of ["desk", "technician"] as const) {
      expect((await workshop.refused(part, planCopy, copy)).code).toBe("not-allowed");
      const made = { ...copy, revision: 1, name: "Mine" };
      expect((await workshop.refused(part, copyPackage, made)).code).toBe("not-allowed");
      const asked = { code: "long-haul-19", versionId: null };
      expect((await workshop.refused(part, showPackage, asked)).code).toBe("not-allowed");
      expect((await workshop.refused(part, listPackages, { versionId: null })).code).toBe("not-allowed");
    }
    const foreign = await workshop.refused("gulfOwner", showPackage, { code: "tow-more", versionId: null });
    expect(foreign.code).toBe("package-not-found");
  });
});
