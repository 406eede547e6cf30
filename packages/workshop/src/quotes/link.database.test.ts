import { describe, expect, test } from "vitest";
import { newId } from "../core/new-id";
import { perform } from "../core/perform";
import { newSecretToken } from "../core/secret-token";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { newDraft, newIssued, newLink } from "../testing/quote-story";
import { acceptVersion } from "./accept-version";
import { declineVersion } from "./decline-version";
import { issueVersion } from "./issue-version";
import { listQuotes } from "./list-quotes";
import { makeLink } from "./make-link";
import { makeVersion } from "./make-version";
import { openCustomerLink } from "./open-customer-link";
import { readLetter } from "./read-letter";
import { revokeLink } from "./revoke-link";
import { showQuote } from "./show-quote";

const trial = demoWorkshop();
const at = (days: number) => new Date(demoNow.getTime() + days * 86_400_000);
const open = async (token: string, when = demoNow) => openCustomerLink(await trial.as("desk", when), token);
const yes = (versionId: string, name = "Q. Customer") => ({
  versionId,
  name,
  agreed: true,
  statement: `${name} accepts.`,
});

/** An issued version with a link to it. */
async function sent(packageCode?: string) {
  const issued = await newIssued(trial, packageCode);
  return { ...issued, ...(await newLink(trial, issued.versionId)) };
}

describe("the customer's link", () => {
  test("opens the version without an account, and shows nothing of what things cost us", async () => {
    const { token, number, versionId } = await sent();
    const opened = await open(token);
    if (!opened.ok) throw new Error("the link did not open");
    const letter = await trial.done(opened.actor, readLetter, {});
    expect(letter).toMatchObject({ id: versionId, number, versionNo: 1, status: "issued" });
    expect(letter.workshop.name).toBe("Saltbush Dyno & Driveline");
    expect(JSON.stringify(letter)).not.toMatch(/"[a-z]*cost[a-z]*":/i);
  });

  test("is kept as a hash only: the token is nowhere in the database", async () => {
    const { token } = await sent("dark-trim-pack");
    const kept = await trial.sql(
      "select count(*)::int as n from customer_link l, completed_request r, audit_event a where l.token_hash = $1 or r.reply::text like $2 or a.after::text like $2",
      [token, `%${token}%`],
    );
    expect(kept).toEqual([{ n: 0 }]);
  });

  test("with one letter changed, cut short, or made up opens nothing", async () => {
    const { token } = await sent("dark-trim-pack");
    const changed = `${token.startsWith("A") ? "B" : "A"}${token.slice(1)}`;
    for (const wrong of [changed, token.slice(0, -1), "", "' or 1=1 --", newSecretToken().token])
      expect(await open(wrong)).toEqual({ ok: false, because: "unknown" });
  });

  test("opens for fourteen days after the quote lapsed, and then no more", async () => {
    const { token, customer } = await sent("dark-trim-pack");
    // Valid until 25 December; fourteen days later is 8 January, until midnight in Adelaide.
    const lastMinute = new Date("2027-01-08T13:29:00Z");
    const over = new Date("2027-01-08T13:30:00Z");
    expect((await open(token, lastMinute)).ok).toBe(true);
    expect(await open(token, over)).toEqual({ ok: false, because: "expired" });
    expect(await trial.refused(customer, readLetter, {}, over)).toMatchObject({ code: "link-not-valid" });
  });

  test("can be closed, and a new one made", async () => {
    const { token, linkId, customer, versionId } = await sent("dark-trim-pack");
    await trial.done("desk", revokeLink, { linkId });
    expect(await open(token)).toEqual({ ok: false, because: "revoked" });
    expect(await trial.refused(customer, readLetter, {})).toMatchObject({ code: "link-not-valid" });
    const again = await newLink(trial, versionId);
    expect((await open(again.token)).ok).toBe(true);
  });

  test("is not made for a draft, a lapsed version, or by another workshop", async () => {
    const { versionId } = await newDraft(trial, "dark-trim-pack");
    const { tokenHash } = newSecretToken();
    expect(await trial.refused("desk", makeLink, { versionId, tokenHash })).toMatchObject({
      code: "not-issued",
    });
    const issued = await sent("dark-trim-pack");
    const wanted = { versionId: issued.versionId, tokenHash };
    expect(await trial.refused("desk", makeLink, wanted, at(40))).toMatchObject({ code: "not-issued" });
    expect(await trial.refused("gulfDesk", makeLink, wanted)).toMatchObject({ code: "version-not-found" });
    expect(await trial.refused("gulfDesk", revokeLink, { linkId: issued.linkId })).toMatchObject({
      code: "link-not-found",
    });
  });

  test("does no more than reading and answering", async () => {
    const { customer, quoteId, versionId } = await sent("dark-trim-pack");
    expect(await trial.refused(customer, showQuote, { quoteId })).toMatchObject({ code: "not-allowed" });
    expect(await trial.refused(customer, makeVersion, { versionId })).toMatchObject({ code: "not-allowed" });
  });
});

describe("acceptance", () => {
  test("keeps name, time, address and sentence, and opens the job with it", async () => {
    const { customer, versionId, quoteId } = await sent();
    const { jobNumber } = await trial.done(customer, acceptVersion, yes(versionId, "Ana Lindqvist-Ode"));
    expect(
      await trial.sql("select name, address, at, statement from acceptance where version_id = $1", [
        versionId,
      ]),
    ).toEqual([
      {
        name: "Ana Lindqvist-Ode",
        address: "192.0.2.1",
        at: demoNow,
        statement: "Ana Lindqvist-Ode accepts.",
      },
    ]);
    const jobs = await trial.sql("select number, status, package_code from job where quote_id = $1", [
      quoteId,
    ]);
    expect(jobs).toEqual([{ number: jobNumber, status: "waiting", package_code: "long-grade-24" }]);
    const quote = await trial.done("desk", showQuote, { quoteId });
    expect(quote.job?.number).toBe(jobNumber);
    expect(quote.versions).toMatchObject([{ status: "accepted", acceptance: { name: "Ana Lindqvist-Ode" } }]);
  });

  test("sent twice by a device accepts once; pressed twice is told", async () => {
    const { customer, versionId, quoteId } = await sent("dark-trim-pack");
    const key = newId();
    const send = async () => perform(await trial.as(customer), acceptVersion, yes(versionId), { key });
    const [one, two] = await Promise.all([send(), send()]);
    expect(one.ok).toBe(true);
    expect(two).toEqual(one);
    expect(await trial.sql("select id from job where quote_id = $1", [quoteId])).toHaveLength(1);
    expect(await trial.refused(customer, acceptVersion, yes(versionId))).toMatchObject({
      code: "already-accepted",
    });
  });

  test("at the same moment by two holders of links is one acceptance", async () => {
    const { customer, versionId } = await sent("dark-trim-pack");
    const other = await newLink(trial, versionId);
    const accept = async (who: typeof customer, name: string) =>
      perform(await trial.as(who), acceptVersion, yes(versionId, name));
    const results = await Promise.all([accept(customer, "First One"), accept(other.customer, "Second One")]);
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
    expect(results.find(({ ok }) => !ok)).toMatchObject({ refusal: { code: "already-accepted" } });
  });

  test.each([
    ["no name", { name: " " }, "name"],
    ["no tick", { agreed: false }, "agreed"],
  ])("with %s is refused at that field", async (_, missing, field) => {
    const { customer, versionId } = await sent("dark-trim-pack");
    expect(await trial.refused(customer, acceptVersion, { ...yes(versionId), ...missing })).toMatchObject({
      field,
    });
  });

  test("of a superseded version is refused, naming the version that replaced it; its own link does not open that one", async () => {
    const one = await sent("dark-trim-pack");
    const two = await trial.done("desk", makeVersion, { versionId: one.versionId });
    await trial.done("desk", issueVersion, { versionId: two.versionId, revision: 1 });
    const refusal = await trial.refused(one.customer, acceptVersion, yes(one.versionId));
    expect(refusal).toMatchObject({ code: "version-superseded" });
    expect(refusal.sentence).toContain("replaced by version 2");
    expect(await trial.done(one.customer, readLetter, {})).toMatchObject({
      versionNo: 1,
      status: "superseded",
      supersededBy: 2,
    });
    expect(await trial.refused(one.customer, acceptVersion, yes(two.versionId))).toMatchObject({
      code: "link-for-other-version",
    });
    const link = await newLink(trial, two.versionId);
    await trial.done(link.customer, acceptVersion, yes(two.versionId));
  });

  test("of another quote by this link is refused", async () => {
    const mine = await sent("dark-trim-pack");
    const theirs = await sent("dark-trim-pack");
    expect(await trial.refused(mine.customer, acceptVersion, yes(theirs.versionId))).toMatchObject({
      code: "link-for-other-version",
    });
    const forged = { ...mine.customer, versionId: theirs.versionId } as typeof mine.customer;
    expect(await trial.refused(forged, acceptVersion, yes(theirs.versionId))).toMatchObject({
      code: "link-not-valid",
    });
  });

  test("is open until midnight of the last day in the workshop's zone, and refused after", async () => {
    const early = await sent("dark-trim-pack");
    const late = await sent("dark-trim-pack");
    await trial.done(early.customer, acceptVersion, yes(early.versionId), new Date("2026-12-25T13:29:59Z"));
    const refusal = await trial.refused(
      late.customer,
      acceptVersion,
      yes(late.versionId),
      new Date("2026-12-25T13:30:00Z"),
    );
    expect(refusal).toMatchObject({ code: "version-lapsed", data: { on: "Fri, 25 Dec 2026" } });
    expect(await trial.done(late.customer, readLetter, {}, at(32))).toMatchObject({ status: "lapsed" });
  });

  test("of a declined version is refused, and the desk reads why", async () => {
    const { customer, versionId, quoteId } = await sent("dark-trim-pack");
    await trial.done(customer, declineVersion, { versionId, reason: "Bought a boat instead." });
    expect(await trial.refused(customer, acceptVersion, yes(versionId))).toMatchObject({
      code: "already-declined",
    });
    const { versions } = await trial.done("desk", showQuote, { quoteId });
    expect(versions).toMatchObject([{ status: "declined", decline: { reason: "Bought a boat instead." } }]);
    const { quotes } = await trial.done("desk", listQuotes, { status: "declined" });
    expect(quotes.find(({ id }) => id === quoteId)).toMatchObject({
      declinedBecause: "Bought a boat instead.",
    });
  });

  test("after a no is refused by the database too: its day and its reason stay as they are", async () => {
    const { customer, versionId } = await sent("dark-trim-pack");
    await trial.done(customer, declineVersion, { versionId });
    const change = trial.sql("update quote_version set declined_because = 'Too dear' where id = $1", [
      versionId,
    ]);
    await expect(change).rejects.toThrow(/issued_version_is_final/);
  });

  test("with a reason for a no that was not given is refused by the database", async () => {
    const { versionId } = await sent("dark-trim-pack");
    const change = trial.sql("update quote_version set declined_because = 'Too dear' where id = $1", [
      versionId,
    ]);
    await expect(change).rejects.toThrow(/issued_version_is_final/);
  });

  test("of version 2 before the work starts moves the waiting job over to it", async () => {
    const one = await sent();
    const { jobNumber } = await trial.done(one.customer, acceptVersion, yes(one.versionId));
    const two = await trial.done("desk", makeVersion, { versionId: one.versionId });
    await trial.done("desk", issueVersion, { versionId: two.versionId, revision: 1 });
    const link = await newLink(trial, two.versionId);
    expect(await trial.done(link.customer, acceptVersion, yes(two.versionId))).toMatchObject({ jobNumber });
    const jobs = await trial.sql(
      "select version_id, (select count(*)::int from job_step s where s.job_id = job.id) as steps from job where quote_id = $1",
      [one.quoteId],
    );
    expect(jobs).toMatchObject([{ version_id: two.versionId }]);
    expect(jobs[0]?.steps).toBeGreaterThan(20);
  });
});
