import { describe, expect, test } from "vitest";
import { perform } from "../core/perform";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { lineOf, newDraft, newIssued, newLink } from "../testing/quote-story";
import { acceptVersion } from "./accept-version";
import { compareVersions } from "./compare-versions";
import { discardDraft } from "./discard-draft";
import { draftFromBuild } from "./draft-from-build";
import { editLine } from "./edit-line";
import { editTerms } from "./edit-terms";
import { issueVersion } from "./issue-version";
import { listQuotes } from "./list-quotes";
import { makeVersion } from "./make-version";
import { removeLine } from "./remove-line";
import { showQuote } from "./show-quote";

const trial = demoWorkshop();
const later = (days: number) => new Date(demoNow.getTime() + days * 86_400_000);
const statusOf = async (versionId: string) =>
  (await trial.sql("select status from quote_version where id = $1", [versionId]))[0]?.status;
/** As the application's own role, inside the workshop's transaction: what only the database can still refuse. */
const asApp = async (sql: string, id: string) => {
  const [row] = await trial.sql("select workshop_id from quote_version where id = $1", [id]);
  return trial.database.inWorkshop(String(row?.workshop_id), (tx) => tx.$executeRawUnsafe(sql, id));
};

describe("issuing", () => {
  test("makes the version final, with who and when", async () => {
    const { quoteId, versionId } = await newIssued(trial);
    const { versions } = await trial.done("desk", showQuote, { quoteId });
    expect(versions).toMatchObject([{ versionNo: 1, status: "issued", issuedAt: demoNow }]);
    const events = await trial.sql(
      "select * from audit_event where entity_id = $1 and use_case = 'quotes.issue'",
      [versionId],
    );
    expect(events).toMatchObject([{ actor_name: "Noor Castellan", after: { status: "issued" } }]);
  });

  test("is refused with everything that the build still lacks, a sentence each", async () => {
    const { buildId, versionId } = await newDraft(trial);
    await trial.sql(
      "delete from build_item using item where item.id = build_item.item_id and item.code in ('hp-pump-upgrade', 'plugs-two-step') and build_id = $1",
      [buildId],
    );
    const first = await trial.refused("desk", issueVersion, { versionId, revision: 1 });
    expect(first.code).toBe("open-points");
    const { points } = first.data as { points: string[] }; // As the refusal's own sentence counts them.
    expect(points.join("\n")).toContain("The build was changed after this draft was priced.");
    expect(points.join("\n")).toMatch(/High-pressure fuel pump: short by/);
    expect(points.join("\n")).toMatch(/plugs/i);
    expect(points.length).toBeGreaterThanOrEqual(3);
    expect(await statusOf(versionId)).toBe("draft");
  });

  test("is refused when a part of the build was taken off the quote", async () => {
    const { quoteId, versionId } = await newDraft(trial);
    const { line } = await lineOf(trial, quoteId, "oil-service");
    await trial.done("desk", removeLine, { versionId, revision: 1, lineId: line.id });
    const refusal = await trial.refused("desk", issueVersion, { versionId, revision: 2 });
    expect(JSON.stringify(refusal.data)).toContain(
      "Engine oil and filter is on the build and not on the quote",
    );
  });

  test("is refused once the draft's last day has passed", async () => {
    const { versionId } = await newDraft(trial);
    const refusal = await trial.refused("desk", issueVersion, { versionId, revision: 1 }, later(40));
    expect(JSON.stringify(refusal.data)).toContain("Its last day has passed");
  });

  test("of a draft that somebody changed meanwhile is refused", async () => {
    const { quoteId, versionId } = await newDraft(trial);
    const { shown } = await trial.done("desk", showQuote, { quoteId });
    const terms = { versionId, revision: 1, validUntil: shown.validUntil, note: "Ring first.", discount: "" };
    await trial.done("manager", editTerms, terms);
    expect(await trial.refused("desk", issueVersion, { versionId, revision: 1 })).toMatchObject({
      code: "stale",
    });
  });

  test("twice at once: one wins, and the other is told that it is issued", async () => {
    const { versionId } = await newDraft(trial);
    const issue = async (as: "desk" | "manager") =>
      perform(await trial.as(as), issueVersion, { versionId, revision: 1 });
    const results = await Promise.all([issue("desk"), issue("manager")]);
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
    expect(results.find(({ ok }) => !ok)).toMatchObject({ refusal: { code: "not-a-draft" } });
  });

  test("by a technician is refused", async () => {
    const { versionId } = await newDraft(trial, "dark-trim-pack");
    expect(await trial.refused("technician", issueVersion, { versionId, revision: 1 })).toMatchObject({
      code: "not-allowed",
    });
  });
});

describe("an issued version", () => {
  test("is not changed by any use case", async () => {
    const { quoteId, versionId } = await newIssued(trial);
    const { line } = await lineOf(trial, quoteId, "oil-service");
    const change = { versionId, revision: 2, lineId: line.id };
    const full = { ...change, description: "Oil", quantity: "1", discountPct: "0" };
    expect(await trial.refused("owner", editLine, full)).toMatchObject({ code: "not-a-draft" });
    expect(await trial.refused("owner", removeLine, change)).toMatchObject({ code: "not-a-draft" });
    expect(await trial.refused("owner", discardDraft, { versionId, revision: 2 })).toMatchObject({
      code: "not-a-draft",
    });
  });

  test.each([
    [
      "its total",
      "update quote_version set gross_minor = 1, net_minor = 1, tax_minor = 0 where id = $1::uuid",
    ],
    ["its last day", "update quote_version set valid_until = '2030-01-01' where id = $1::uuid"],
    ["itself", "delete from quote_version where id = $1::uuid"],
    [
      "a line's price",
      "update quote_line set net_minor = 1, tax_minor = 0, gross_minor = 1 where version_id = $1::uuid",
    ],
    ["a line", "delete from quote_line where version_id = $1::uuid"],
    ["its way back to draft", "update quote_version set status = 'draft' where id = $1::uuid"],
  ])("keeps %s against the application's own role", async (_, sql) => {
    const { versionId } = await newIssued(trial, "dark-trim-pack");
    await expect(asApp(sql, versionId)).rejects.toThrow(/issued_version_is_final|quote_version_status/);
  });
});

describe("version 2", () => {
  test("is a draft copied from version 1; issuing it supersedes version 1 in the same moment", async () => {
    const one = await newIssued(trial);
    const two = await trial.done("desk", makeVersion, { versionId: one.versionId });
    expect(two).toMatchObject({ quoteId: one.quoteId, versionNo: 2 });
    expect(await statusOf(one.versionId)).toBe("issued");
    await trial.done("desk", issueVersion, { versionId: two.versionId, revision: 1 });
    expect(await statusOf(one.versionId)).toBe("superseded");
    expect(await statusOf(two.versionId)).toBe("issued");
  });

  test("is told apart from version 1 in words and figures", async () => {
    const one = await newIssued(trial);
    const { versionId } = await trial.done("desk", makeVersion, { versionId: one.versionId });
    const oil = await lineOf(trial, one.quoteId, "oil-service");
    const change = { versionId, revision: 1, lineId: oil.line.id, quantity: "2", discountPct: "0" };
    await trial.done("desk", editLine, { ...change, description: oil.line.description });
    const { changes, totals } = await trial.done("desk", compareVersions, {
      quoteId: one.quoteId,
      from: 1,
      to: 2,
    });
    expect(changes).toEqual([
      {
        id: "item oil-service",
        words: "Engine oil and filter: quantity 1 → 2",
        beforeMinor: 15_950,
        afterMinor: 31_900,
      },
    ]);
    expect(totals.afterMinor - totals.beforeMinor).toBe(15_950);
  });

  test("is told apart once by a discount off the whole, not on every line", async () => {
    const one = await newIssued(trial);
    const { versionId } = await trial.done("desk", makeVersion, { versionId: one.versionId });
    const { validUntil } = (await trial.done("desk", showQuote, { quoteId: one.quoteId })).shown;
    const terms = { versionId, revision: 1, validUntil, note: "" };
    await trial.done("desk", editTerms, { ...terms, discount: "100.00" });
    const { changes } = await trial.done("desk", compareVersions, { quoteId: one.quoteId, from: 1, to: 2 });
    expect(changes).toEqual([
      { id: "discount", words: "Discount off the whole, without GST", beforeMinor: 0, afterMinor: -10_000 },
    ]);
  });

  test("is not made twice, nor from a draft", async () => {
    const one = await newIssued(trial);
    const two = await trial.done("desk", makeVersion, { versionId: one.versionId });
    expect(await trial.refused("desk", makeVersion, { versionId: one.versionId })).toMatchObject({
      code: "draft-exists",
    });
    expect(await trial.refused("desk", makeVersion, { versionId: two.versionId })).toMatchObject({
      code: "nothing-to-copy",
    });
  });

  test("can be thrown away again, and version 1 stays in force", async () => {
    const one = await newIssued(trial);
    const two = await trial.done("desk", makeVersion, { versionId: one.versionId });
    await trial.done("desk", discardDraft, { versionId: two.versionId, revision: 1 });
    const { versions } = await trial.done("desk", showQuote, { quoteId: one.quoteId });
    expect(versions).toMatchObject([{ versionNo: 1, status: "issued" }]);
  });

  test("of a lapsed version marks that one lapsed", async () => {
    const one = await newIssued(trial);
    const two = await trial.done("desk", makeVersion, { versionId: one.versionId }, later(40));
    expect(await statusOf(one.versionId)).toBe("lapsed");
    const { versions } = await trial.done("desk", showQuote, { quoteId: one.quoteId }, later(40));
    expect(versions.at(-1)).toMatchObject({ id: two.versionId, validUntil: "2027-02-03" });
  });

  test("is refused once work on the accepted version has started, also from the build", async () => {
    const one = await newIssued(trial);
    const { customer } = await newLink(trial, one.versionId);
    await trial.done(customer, acceptVersion, {
      versionId: one.versionId,
      name: "Q. Customer",
      agreed: true,
      statement: "I accept.",
    });
    await trial.sql("update job set started_at = now() where version_id = $1", [one.versionId]);
    expect(await trial.refused("desk", makeVersion, { versionId: one.versionId })).toMatchObject({
      code: "job-started",
    });
    expect(await trial.refused("desk", draftFromBuild, { buildId: one.buildId })).toMatchObject({
      code: "job-started",
    });
  });

  test("of another workshop's quote does not exist", async () => {
    const one = await newIssued(trial, "dark-trim-pack");
    expect(await trial.refused("gulfDesk", makeVersion, { versionId: one.versionId })).toMatchObject({
      code: "version-not-found",
    });
    const pair = { quoteId: one.quoteId, from: 1, to: 2 };
    expect(await trial.refused("gulfDesk", compareVersions, pair)).toMatchObject({ code: "quote-not-found" });
  });
});

describe("the list of quotes", () => {
  test("finds by number, customer and plate, and says lapsed from the day after the last", async () => {
    const { number, versionId } = await newIssued(trial, "dark-trim-pack");
    const find = async (search: string, at = demoNow) => trial.done("desk", listQuotes, { search }, at);
    const [row] = (await find(String(number))).quotes;
    expect(row).toMatchObject({ number, versionNo: 1, status: "issued" });
    for (const search of [row?.customer ?? "?", row?.plate.toLowerCase() ?? "?"])
      expect((await find(search)).quotes.map((quote) => quote.number)).toContain(number);
    // Valid until 25 December: still open late that evening in Adelaide, lapsed at midnight there.
    const lastEvening = new Date("2026-12-25T13:29:00Z");
    const midnight = new Date("2026-12-25T13:30:00Z");
    expect((await find(String(number), lastEvening)).quotes[0]?.status).toBe("issued");
    expect((await find(String(number), midnight)).quotes[0]?.status).toBe("lapsed");
    expect(await statusOf(versionId)).toBe("issued");
  });

  test("keeps to a status when asked, and treats % and _ as what they are", async () => {
    await newIssued(trial, "dark-trim-pack");
    const issued = await trial.done("desk", listQuotes, { status: "issued" });
    expect(new Set(issued.quotes.map(({ status }) => status))).toEqual(new Set(["issued"]));
    expect((await trial.done("desk", listQuotes, { search: "%" })).quotes).toEqual([]);
    expect((await trial.done("desk", listQuotes, { search: "_" })).quotes).toEqual([]);
  });

  test("of another workshop is another list", async () => {
    const { number } = await newIssued(trial, "dark-trim-pack");
    const { quotes } = await trial.done("gulfDesk", listQuotes, { search: String(number) });
    expect(quotes).toEqual([]);
  });
});
