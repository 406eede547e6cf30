import { describe, expect, test } from "vitest";
import { showSheet } from "../../builds/show-sheet";
import { demoWorkshop, type Part } from "../../testing/demo-workshop";
import { changePart } from "../change-part";
import { startVersion } from "../start-version";
import { openExample } from "./open-example";
import { proveCatalogueVersion } from "./prove-catalogue";

const workshop = demoWorkshop();
/** It ends when all is proven; a busy machine may take its time. */
const WITHIN_MS = 280_000;

async function prove(part: Part, versionId: string | null, cancelled = new AbortController().signal) {
  return proveCatalogueVersion(await workshop.as(part), { versionId }, cancelled, WITHIN_MS);
}

async function provenReport(versionId: string | null) {
  const report = await prove("manager", versionId);
  if (!report.ok) throw new Error(report.refusal.sentence);
  return report.value;
}

async function draftedRule(title: string, barred: { readonly item: string }) {
  const { versionId } = await workshop.done("manager", startVersion, { title });
  const rule = {
    kind: "excludes",
    when: { item: "blower-24-92" },
    // biome-ignore lint/suspicious/noThenProperty: the condition language of the rules has this word.
    then: barred,
    because: "The cooler would stand in its way.",
    source: "common practice, no source",
    safety: false,
    models: [],
    position: 900,
  };
  const change = {
    versionId,
    revision: 1,
    part: "rule",
    code: "no-cooler-with-24",
    isNew: true,
    after: rule,
  };
  await workshop.done("manager", changePart, change);
  return versionId;
}

describe("the proof of the catalogue", { timeout: 300_000 }, () => {
  test("speaks of every vehicle, its packages and its limits, and leaves nothing open", async () => {
    const { vehicles, findings, title } = await provenReport(null);
    expect(title).toBeNull();
    expect(vehicles.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["Kerrow Ridgewold 5.7", "Orrismere GT 4.4", "Wendra Vale 3.0 TD"]),
    );
    const ridgewold = vehicles.find(({ code }) => code === "ridgewold-57");
    const grade = ridgewold?.counts.find((count) => count.package === "Long Grade 2.4");
    expect(grade?.builds).toMatch(/^(at least )?[1-9][0-9,]*$/);
    expect(ridgewold?.counts.filter(({ builds }) => builds === "none")).toEqual([]);
    const limits = vehicles.flatMap((each) => each.limits);
    expect(limits.length).toBeGreaterThan(20);
    expect(limits.filter(({ verdict }) => verdict === "unsettled")).toEqual([]);
    for (const { verdict, example } of limits) expect(example === null).toBe(verdict === "kept-by-others");
    expect(findings.filter(({ standing }) => standing === "open")).toEqual([]);
    expect(findings.filter(({ sentence }) => sentence.includes("can never be built"))).toEqual([]);
  });

  test("shows what a draft would break, and the two rules that leave no way", async () => {
    const versionId = await draftedRule("No cooler", { item: "charge-cooler" });
    const { findings, title } = await provenReport(versionId);
    expect(title).toBe("No cooler");
    const wrong = findings.filter(({ standing }) => standing === "wrong").map(({ sentence }) => sentence);
    const blower = wrong.find((sentence) => /^Blower .*2\.4.* can never be chosen\./.test(sentence));
    expect(blower).toContain("“The cooler would stand in its way.”");
    expect(blower).toContain("“Uncooled charge leaves no spark advance");
    expect(wrong.some((sentence) => sentence.startsWith("Long Grade 2.4 can never be built."))).toBe(true);
  });

  test("says that everything is open when nobody waits for it", async () => {
    const gone = new AbortController();
    gone.abort();
    const report = await prove("owner", null, gone.signal);
    expect(report.ok && report.value.vehicles.flatMap(({ limits }) => limits)).toEqual([]);
    expect(report.ok && new Set(report.value.findings.map(({ standing }) => standing))).toEqual(
      new Set(["open"]),
    );
  });

  test("is for manager and owner, of a draft that is there and names what is there", async () => {
    for (const part of ["desk", "technician"] as const) {
      const report = await prove(part, null);
      expect(report.ok ? null : report.refusal.code).toBe("not-allowed");
    }
    const missing = await prove("owner", "0197a000-0000-7000-8000-000000000000");
    expect(missing.ok ? null : missing.refusal.code).toBe("version-not-found");
    const nowhere = await prove("owner", await draftedRule("Typing error", { item: "chrage-cooler" }));
    expect(nowhere.ok ? null : nowhere.refusal).toMatchObject({ code: "points-nowhere" });
    const otherWorkshop = await prove("gulfOwner", await draftedRule("Ours", { item: "belt-8-rib" }));
    expect(otherWorkshop.ok ? null : otherWorkshop.refusal.code).toBe("version-not-found");
  });
});

describe("an example of a limit that can be exceeded", () => {
  const example = {
    modelCode: "ridgewold-57",
    limit: "gearbox-torque",
    items: ["blower-24-92", "charge-cooler", "boost-calibration"],
  };

  test("opens on a build sheet with its items, which says what is exceeded", async () => {
    const { id } = await workshop.done("manager", openExample, example);
    const sheet = await workshop.done("desk", showSheet, { buildId: id });
    expect(JSON.stringify(sheet)).toContain("gearbox-torque");
    expect(JSON.stringify(sheet)).toContain("Not for a customer.");
  });

  test("is not opened with an item that is only drafted", async () => {
    const drafted = { ...example, items: ["only-drafted"] };
    expect((await workshop.refused("owner", openExample, drafted)).code).toBe("example-drafted");
  });

  test("is not opened where no such vehicle is in the book", async () => {
    const nowhere = { ...example, modelCode: "no-such-model" };
    expect((await workshop.refused("owner", openExample, nowhere)).code).toBe("no-such-vehicle");
  });

  test("is not opened by the front desk", async () => {
    expect((await workshop.refused("desk", openExample, example)).code).toBe("not-allowed");
  });
});
