import { describe, expect, test } from "vitest";
import { startBuild } from "../builds/start-build";
import { newId } from "../core/new-id";
import { perform } from "../core/perform";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { lineOf, newBuild, newDraft, newVehicle } from "../testing/quote-story";
import { addLine } from "./add-line";
import { discardDraft } from "./discard-draft";
import { draftFromBuild } from "./draft-from-build";
import { editLine } from "./edit-line";
import { editTerms } from "./edit-terms";
import { removeLine } from "./remove-line";
import { showQuote } from "./show-quote";
import { takeBuildAgain } from "./take-build-again";

const trial = demoWorkshop();
const shown = async (quoteId: string, as: "desk" | "owner" = "desk") =>
  trial.done(as, showQuote, { quoteId });

describe("a draft from a build", () => {
  test("has a line for each part, each operation and shared access work once, and adds up", async () => {
    const { quoteId } = await newDraft(trial);
    const { shown: version } = await shown(quoteId);
    const codes = version.lines.map(({ kind, code }) => `${kind} ${code}`);
    expect(codes).toContain("item blower-24-92");
    expect(codes).toContain("operation fit-blower-24");
    expect(new Set(codes).size).toBe(codes.length);
    expect(version.lines.filter(({ kind }) => kind === "access").length).toBeGreaterThan(3);
    expect(Number(version.hours.saved)).toBeGreaterThan(5);
    const sum = version.lines.reduce((total, line) => total + line.grossMinor, 0);
    expect(sum).toBe(version.totals.grossMinor);
    expect(version.totals.taxMinor).toBe(Math.round(version.totals.netMinor / 10));
  });

  test("asks a deposit of at least what cannot go back, and carries the package's promise and cautions", async () => {
    const { quoteId } = await newDraft(trial);
    const { shown: version } = await shown(quoteId);
    expect(version.deposit.dueMinor).toBeGreaterThanOrEqual(1_130_000);
    expect(version.promise).toMatchObject({ lowKw: 325, highKw: 375, at: "hubs" });
    expect(version.cautions.join(" ")).toContain("Not for road use");
    expect(version.assumptions.length).toBeGreaterThan(2);
  });

  test("holds for the site's thirty days from its own today", async () => {
    const { quoteId } = await newDraft(trial);
    // Late evening UTC is the next morning in Adelaide.
    expect(demoNow.toISOString().slice(0, 10)).toBe("2026-11-24");
    expect((await shown(quoteId)).shown.validUntil).toBe("2026-12-25");
  });

  test("is made once: asking again answers the draft that is there", async () => {
    const { buildId, versionId } = await newDraft(trial);
    expect(await trial.done("desk", draftFromBuild, { buildId })).toMatchObject({ versionId, isNew: false });
  });

  test("sent twice by a device makes one quote", async () => {
    const buildId = await newBuild(trial);
    const context = await trial.as("desk");
    const key = newId();
    const [one, two] = await Promise.all([
      perform(context, draftFromBuild, { buildId }, { key }),
      perform(context, draftFromBuild, { buildId }, { key }),
    ]);
    expect(one).toEqual(two);
    expect(await trial.sql("select id from quote where build_id = $1", [buildId])).toHaveLength(1);
  });

  test("is refused for a build with nothing on it", async () => {
    const vehicleId = await newVehicle(trial);
    const { id } = await trial.done("desk", startBuild, {
      vehicleId,
      goal: "Look first.",
      wantedBy: null,
      packageCode: null,
    });
    expect(await trial.refused("desk", draftFromBuild, { buildId: id })).toMatchObject({
      code: "build-empty",
    });
  });

  test("is refused with a last day in the past, or years away", async () => {
    const buildId = await newBuild(trial);
    const from = (validUntil: string) => trial.refused("desk", draftFromBuild, { buildId, validUntil });
    expect(await from("2026-11-24")).toMatchObject({ code: "date-past" });
    expect(await from("2029-01-01")).toMatchObject({ code: "date-too-far" });
    expect(await from("soon")).toMatchObject({ code: "invalid-input", field: "validUntil" });
  });

  test("is refused to another workshop", async () => {
    const { buildId, quoteId, versionId } = await newDraft(trial);
    expect(await trial.refused("gulfDesk", draftFromBuild, { buildId })).toMatchObject({
      code: "build-not-found",
    });
    expect(await trial.refused("gulfDesk", showQuote, { quoteId })).toMatchObject({
      code: "quote-not-found",
    });
    const change = { versionId, revision: 1, validUntil: "2026-12-01", note: "", discount: "" };
    expect(await trial.refused("gulfOwner", editTerms, change)).toMatchObject({ code: "version-not-found" });
  });
});

describe("changing a draft", () => {
  test("a line's words, number and discount change, and every amount follows", async () => {
    const { quoteId, versionId } = await newDraft(trial);
    const { line, revision } = await lineOf(trial, quoteId, "oil-service");
    const change = {
      versionId,
      revision,
      lineId: line.id,
      description: "Oil, twice",
      quantity: "2",
      discountPct: "5",
    };
    await trial.done("desk", editLine, change);
    const after = await lineOf(trial, quoteId, "oil-service");
    // 2 × 145.00 less 5 % is 275.50, and 27.55 tax.
    expect(after.line).toMatchObject({ description: "Oil, twice", quantity: "2", grossMinor: 30_305 });
    expect(after.revision).toBe(revision + 1);
  });

  test("the second of two tabs is told who was first and what stands there now, and nothing of hers is written", async () => {
    const { quoteId, versionId } = await newDraft(trial);
    const { line, revision } = await lineOf(trial, quoteId, "oil-service");
    const change = (description: string, quantity: string) => ({
      versionId,
      revision,
      lineId: line.id,
      description,
      quantity,
      discountPct: "0",
    });
    await trial.done("manager", editLine, change("Oil and filter, long life", "1"));
    const refusal = await trial.refused("desk", editLine, change("Oil", "3"));
    expect(refusal).toMatchObject({ code: "stale" });
    expect(refusal.sentence).toContain("Marek Oduya changed this version");
    expect(JSON.stringify(refusal.data)).toContain("Oil and filter, long life");
    expect((await lineOf(trial, quoteId, "oil-service")).line.quantity).toBe("1");
  });

  test("two at once: one wins, the other is told", async () => {
    const { quoteId, versionId } = await newDraft(trial);
    const { line, revision } = await lineOf(trial, quoteId, "oil-service");
    const edit = async (as: "desk" | "manager", quantity: string) =>
      perform(await trial.as(as), editLine, {
        versionId,
        revision,
        lineId: line.id,
        description: "Oil",
        quantity,
        discountPct: "0",
      });
    const results = await Promise.all([edit("desk", "2"), edit("manager", "3")]);
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
    expect(results.find(({ ok }) => !ok)).toMatchObject({ refusal: { code: "stale" } });
  });

  test.each(["0", "-1", "0.000", "1.2345", "two", "", "1,5"])(
    "a quantity of %s is refused",
    async (quantity) => {
      const { quoteId, versionId } = await newDraft(trial, "dark-trim-pack");
      const { line, revision } = await lineOf(trial, quoteId, "dark-trim");
      const change = {
        versionId,
        revision,
        lineId: line.id,
        description: "Trim",
        quantity,
        discountPct: "0",
      };
      expect(await trial.refused("desk", editLine, change)).toMatchObject({ field: "quantity" });
    },
  );

  test("half a part is refused, half an hour is not", async () => {
    const { quoteId, versionId } = await newDraft(trial);
    const { line, revision } = await lineOf(trial, quoteId, "oil-service");
    const change = {
      versionId,
      revision,
      lineId: line.id,
      description: "Oil",
      quantity: "0.5",
      discountPct: "0",
    };
    expect(await trial.refused("desk", editLine, change)).toMatchObject({ code: "pieces-are-whole" });
    const work = await lineOf(trial, quoteId, "change-oil");
    await trial.done("desk", editLine, { ...change, lineId: work.line.id });
  });

  test("a line of one's own is added at an exact price, and removed again", async () => {
    const { quoteId, versionId } = await newDraft(trial);
    const extra = {
      versionId,
      revision: 1,
      description: "Loan car",
      quantity: "3",
      unit: "day",
      unitPrice: "45.10",
      discountPct: "",
    };
    const { lineId } = await trial.done("desk", addLine, extra);
    const after = (await shown(quoteId)).shown;
    expect(after.lines.find(({ id }) => id === lineId)).toMatchObject({
      kind: "extra",
      unitPriceMinor: 4_510,
    });
    await trial.done("desk", removeLine, { versionId, revision: 2, lineId });
    expect((await shown(quoteId)).shown.lines.some(({ id }) => id === lineId)).toBe(false);
    expect(await trial.refused("desk", removeLine, { versionId, revision: 3, lineId })).toMatchObject({
      code: "line-not-found",
    });
  });

  test.each(["free", "12.345", "-5", "1000000.01"])("a price of %s is refused", async (unitPrice) => {
    const { versionId } = await newDraft(trial, "dark-trim-pack");
    const extra = { versionId, revision: 1, description: "Extra", quantity: "1", unit: "each", unitPrice };
    expect(await trial.refused("desk", addLine, extra)).toMatchObject({ code: "price-not-valid" });
  });

  test("a last day in the past is refused, today is not", async () => {
    const { versionId } = await newDraft(trial, "dark-trim-pack");
    const terms = { versionId, revision: 1, note: "", discount: "" };
    expect(await trial.refused("desk", editTerms, { ...terms, validUntil: "2026-11-24" })).toMatchObject({
      code: "date-past",
    });
    await trial.done("desk", editTerms, { ...terms, validUntil: "2026-11-25" });
  });

  test("the only version of a quote is not discarded", async () => {
    const { versionId } = await newDraft(trial, "dark-trim-pack");
    expect(await trial.refused("desk", discardDraft, { versionId, revision: 1 })).toMatchObject({
      code: "only-version",
    });
  });

  test("a build that was changed is taken again; words, discounts and own lines stay", async () => {
    const { buildId, quoteId, versionId } = await newDraft(trial);
    const { line } = await lineOf(trial, quoteId, "oil-service");
    const kept = { lineId: line.id, description: "Oil, ours", quantity: "1", discountPct: "5" };
    await trial.done("desk", editLine, { versionId, revision: 1, ...kept });
    await trial.sql(
      "delete from build_item using item where item.id = build_item.item_id and item.code = 'gearbox-calibration' and build_id = $1",
      [buildId],
    );
    const before = (await shown(quoteId)).shown;
    expect(before.open?.isBuildChanged).toBe(true);
    await trial.done("desk", takeBuildAgain, { versionId, revision: 2 });
    const after = (await shown(quoteId)).shown;
    expect(after.open?.isBuildChanged).toBe(false);
    expect(after.lines.some(({ code }) => code === "gearbox-calibration")).toBe(false);
    expect(after.lines.find(({ code }) => code === "oil-service")).toMatchObject({
      description: "Oil, ours",
      discountPct: "5",
    });
  });
});

describe("discounts", () => {
  test("beyond the site's limit are refused to the desk, and given by the owner", async () => {
    const { quoteId, versionId } = await newDraft(trial);
    const { line, revision } = await lineOf(trial, quoteId, "oil-service");
    const change = {
      versionId,
      revision,
      lineId: line.id,
      description: "Oil",
      quantity: "1",
      discountPct: "5.01",
    };
    expect(await trial.refused("desk", editLine, change)).toMatchObject({ code: "discount-over-limit" });
    await trial.done("owner", editLine, change);
    // The desk may go on with what the owner granted, and no further.
    const granted = { ...change, revision: revision + 1 };
    await trial.done("desk", editLine, { ...granted, description: "Oil and filter" });
    expect(
      await trial.refused("desk", editLine, { ...granted, revision: revision + 2, discountPct: "6" }),
    ).toMatchObject({
      code: "discount-over-limit",
    });
  });

  test("off the whole count together with those of the lines", async () => {
    const { quoteId, versionId } = await newDraft(trial);
    const { totals, validUntil } = (await shown(quoteId)).shown;
    const terms = { versionId, revision: 1, validUntil, note: "" };
    const percent = (pct: number) => ((totals.netMinor * pct) / 10_000).toFixed(2);
    expect(await trial.refused("desk", editTerms, { ...terms, discount: percent(5.1) })).toMatchObject({
      code: "discount-over-limit",
    });
    await trial.done("desk", editTerms, { ...terms, discount: percent(4.9) });
    const { line } = await lineOf(trial, quoteId, "blower-24-92");
    const off = {
      versionId,
      revision: 2,
      lineId: line.id,
      description: "Blower",
      quantity: "1",
      discountPct: "4",
    };
    expect(await trial.refused("desk", editLine, off)).toMatchObject({ code: "discount-over-limit" });
  });

  test("cost and margin are shown to the owner and not to the desk", async () => {
    const { quoteId } = await newDraft(trial);
    expect((await shown(quoteId)).margin).toBeNull();
    const { margin } = await shown(quoteId, "owner");
    expect(margin?.marginBasisPoints).toBeGreaterThan(2_500);
    expect(margin?.marginBasisPoints).toBeLessThan(5_000);
    expect(JSON.stringify(await shown(quoteId))).not.toContain("unitCost");
  });
});
