import { describe, expect, test } from "vitest";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { showToday } from "../today/show-today";
import { editPart } from "./edit-part";
import type { ContentOf } from "./part-content";
import { publishDue } from "./publish-due";
import { publishVersion } from "./publish-version";
import { readRuleBack, saveRule } from "./save-rule";
import { scheduleVersion, withdrawVersion } from "./schedule-version";
import { showVersion } from "./show-version";
import { startVersion } from "./start-version";
import { markSample, tryVersion } from "./try/try-version";

const workshop = await demoWorkshop();

const winchNeedsAlternator = {
  kind: "needs",
  when: { all: [{ item: "high-mount-winch" }, { not: { item: "brake-controller" } }] },
  what: { any: [{ item: "alternator-upgrade" }, { fact: "alternatorSpareA", atLeast: "90" }] },
  because: "A winch draws more than the alternator gives.",
  source: "common practice, no source",
  safety: false,
  models: [],
};

async function drafted(rule: object = winchNeedsAlternator) {
  const { versionId } = await workshop.done("manager", startVersion, { title: "Winch" });
  const saved = await workshop.done("manager", saveRule, {
    versionId,
    revision: 1,
    code: "",
    isNew: true,
    rule,
  });
  return { versionId, ...saved };
}

describe("a rule from its choices", () => {
  test("reads back as a sentence and is kept as it was put together", async () => {
    const { versionId, code } = await drafted();
    expect(code).toBe("a-winch-draws-more-than-the-alternator");
    const { sentence } = await workshop.done("desk", readRuleBack, { versionId, rule: winchNeedsAlternator });
    expect(sentence).toBe(
      "When the build has “Winch, high mount” and no “Trailer brake controller”, it needs “Alternator upgrade, 60 A more” or alternatorSpareA of at least 90.",
    );
    const { content } = await workshop.done("manager", editPart, { versionId, part: "rule", code });
    expect((content as ContentOf<"rule">).source).toBe("common practice, no source");
  });

  test("of a limit keeps what supplies, what asks, and what takes the place of a standard part", async () => {
    const { versionId, code } = await drafted({
      kind: "capacity",
      quantity: "spare current at hot idle",
      unit: "A",
      link: "alternator",
      baseFact: "alternatorSpareA",
      reservePct: "10",
      amounts: [
        { item: "alternator-upgrade", side: "supply", amount: "150", replaces: true },
        { item: "high-mount-winch", side: "demand", amount: "1,200.5", replaces: false },
      ],
      because: "Limit.",
      source: "common practice, no source",
      safety: true,
      models: ["ridgewold-57"],
    });
    const { content } = await workshop.done("manager", editPart, { versionId, part: "rule", code });
    expect(content).toMatchObject({
      supply: { "alternator-upgrade": { whole: 150, lessFact: "alternatorSpareA" } },
      demand: { "high-mount-winch": 1_200.5 },
      reservePct: 10,
    });
  });

  test("says which line is not finished", async () => {
    const { versionId } = await workshop.done("manager", startVersion, { title: "Unfinished" });
    const said = async (change: object) => {
      const rule = { ...winchNeedsAlternator, ...change };
      const input = { versionId, revision: 1, code: "", isNew: true, rule };
      return (await workshop.refused("manager", saveRule, input)).sentence;
    };
    expect(await said({ what: { item: "" } })).toMatch(/^Choose an item/);
    expect(
      await said({ when: { all: [{ item: "dark-trim" }, { fact: "odometerKm", atLeast: "far" }] } }),
    ).toMatch(/^Say how much/);
    expect(await said({ when: { any: [] } })).toMatch(/^A list needs a line/);
    expect(await said({ because: " " })).toMatch(/^Say why/);
    const away = { versionId: "00000000-0000-7000-8000-000000000000", rule: winchNeedsAlternator };
    expect((await workshop.refused("desk", readRuleBack, away)).code).toBe("version-not-found");
  });
});

describe("a draft tried before it is published", () => {
  test("names the builds that would gain something missing, samples first, and changes nothing", async () => {
    const rows = await workshop.sql(
      "select b.number from build b join build_item bi on bi.build_id = b.id join item i on i.id = bi.item_id where i.code = 'blower-24-92' and not exists (select 1 from build_item x join item y on y.id = x.item_id where x.build_id = b.id and y.code = 'dark-trim') order by b.number limit 1",
    );
    const number = Number(rows[0]?.number);
    await workshop.done("owner", markSample, { number, isSample: true });
    expect((await workshop.refused("owner", markSample, { number, isSample: true })).code).toBe(
      "sample-already",
    );
    const { versionId } = await drafted({
      ...winchNeedsAlternator,
      when: { item: "blower-24-92" },
      what: { item: "dark-trim" },
    });
    const tried = await workshop.done("desk", tryVersion, { versionId });
    expect(tried.differing[0]).toMatchObject({ is: "sample", number });
    expect(tried.differing[0]?.gains).toContain("Missing: Dark trim: grille, badges, mirror caps");
    expect(tried.sentences[0]).toBe("One sample build would gain a missing item.");
    expect(tried.tried).toBeGreaterThan(1);
    await workshop.done("owner", markSample, { number, isSample: false });
    expect((await workshop.refused("owner", markSample, { number, isSample: false })).code).toBe(
      "sample-not",
    );
    expect((await workshop.refused("owner", markSample, { number: 99_999, isSample: true })).code).toBe(
      "no-such-build",
    );
    expect((await workshop.refused("gulfOwner", tryVersion, { versionId })).code).toBe("version-not-found");
  });
});

describe("a version with a day", () => {
  const later = new Date(demoNow.getTime() + 3 * 86_400_000);
  const service = async (at: Date) => publishDue(await workshop.as("owner", at));
  const day = (days: number) => new Date(demoNow.getTime() + days * 86_400_000).toISOString().slice(0, 10);

  test("is published when its day has come on the site’s calendar, in the name of who set it", async () => {
    const { versionId, revision } = await drafted();
    await workshop.done("manager", scheduleVersion, { versionId, revision, on: day(2) });
    expect(await service(demoNow)).toEqual({ published: 0 });
    expect(await service(later)).toEqual({ published: 1 });
    const shown = await workshop.done("owner", showVersion, { versionId });
    expect(shown.state).toBe("published");
    expect(shown.publishedBy).toMatch(/^Marek/);
    const refusal = await workshop.refused("manager", withdrawVersion, { versionId, revision: 4 });
    expect(refusal.code).toBe("version-published");
    expect((await workshop.refused("desk", tryVersion, { versionId })).code).toBe("version-published");
  });

  test("stays where it is when a newer catalogue overtook it, and can be withdrawn", async () => {
    const rule = { ...winchNeedsAlternator, because: "Another reason." };
    const waiting = await drafted(rule);
    const quick = await drafted(rule);
    const at = { versionId: waiting.versionId, revision: waiting.revision };
    await workshop.done("manager", scheduleVersion, { ...at, on: day(2) });
    await workshop.done("manager", publishVersion, { versionId: quick.versionId, revision: quick.revision });
    expect(await service(later)).toEqual({ published: 0 });
    const { owed } = await workshop.done("owner", showToday, {}, later);
    expect(owed.find(({ kind }) => kind === "catalogue-held")?.sentence).toMatch(
      /a newer version has changed/,
    );
    const desk = await workshop.done("desk", showToday, {}, later);
    expect(desk.owed.some(({ kind }) => kind === "catalogue-held")).toBe(false);
    const open = { versionId: waiting.versionId, revision: waiting.revision + 1 };
    await workshop.done("manager", withdrawVersion, open);
    const again = await workshop.refused("manager", withdrawVersion, {
      ...open,
      revision: open.revision + 1,
    });
    expect(again.code).toBe("not-scheduled");
  });

  test("needs a change, a day to come and somebody who may publish", async () => {
    const { versionId } = await workshop.done("manager", startVersion, { title: "Empty" });
    const on = day(5);
    expect((await workshop.refused("manager", scheduleVersion, { versionId, revision: 1, on })).code).toBe(
      "nothing-changed",
    );
    const full = await drafted({ ...winchNeedsAlternator, because: "A third reason." });
    const at = { versionId: full.versionId, revision: full.revision };
    expect((await workshop.refused("manager", scheduleVersion, { ...at, on: day(0) })).code).toBe(
      "day-is-past",
    );
    expect((await workshop.refused("manager", scheduleVersion, { ...at, revision: 9, on })).code).toBe(
      "stale",
    );
    for (const useCase of [scheduleVersion, withdrawVersion])
      expect((await workshop.refused("desk", useCase as typeof scheduleVersion, { ...at, on })).code).toBe(
        "not-allowed",
      );
  });
});
