import { describe, expect, test } from "vitest";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { showToday } from "./show-today";

const trial = demoWorkshop();

const later = (days: number) => new Date(demoNow.getTime() + days * 86_400_000);

describe("what the desk owes", () => {
  test("is told in order of urgency, each with one action", async () => {
    const { owed, today } = await trial.done("desk", showToday, {});
    expect(today).toBe("2026-11-25");
    expect(owed.length).toBeGreaterThan(3);
    const kinds = owed.map(({ kind }) => kind);
    const order = ["fault", "lapses-now", "hand-over-blocked", "deposit", "unpaid", "ready", "waiting"];
    const known = kinds.filter((kind) => order.includes(kind));
    expect(known).toEqual(known.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)));
    for (const { sentence, action } of owed) {
      expect(sentence).toMatch(/[.”]$/);
      expect(action.label).not.toBe("");
    }
  });

  test("a quote that lapses tomorrow says so, and the day after that it has lapsed", async () => {
    const { owed } = await trial.done("desk", showToday, {});
    const lapsing = owed.find(({ kind }) => kind === "lapses-now");
    expect(lapsing?.sentence).toMatch(/^Quote \d+ for .+ lapses (today|tomorrow)\.$/);
    const after = await trial.done("desk", showToday, {}, later(3));
    const same = after.owed.find(
      ({ action }) => action.id === lapsing?.action.id && action.place === "quote",
    );
    expect(same?.sentence).toMatch(/lapsed/);
  });

  test("a deposit that comes leaves the list", async () => {
    const { owed } = await trial.done("desk", showToday, {});
    const deposit = owed.find(({ kind }) => kind === "deposit");
    expect(deposit?.sentence).toMatch(/^Deposit for job \d+ not received: \$[\d,.]+ is due/);
    await trial.sql(
      `insert into payment (id, workshop_id, quote_id, kind, held_as, amount_minor, method, received_on, recorded_at)
       select gen_random_uuid(), workshop_id, id, 'deposit', 'security', 100000000, 'transfer', '2026-11-25', now() from quote where id = $1`,
      [deposit?.action.id],
    );
    const after = await trial.done("desk", showToday, {});
    expect(
      after.owed.filter(({ kind, action }) => kind === "deposit" && action.id === deposit?.action.id),
    ).toEqual([]);
  });

  test("comings and goings are those of the workshop's own day", async () => {
    const { arrivals, collections } = await trial.done("desk", showToday, {});
    for (const { at } of [...arrivals, ...collections]) expect(at).toMatch(/^\d\d:\d\d$/);
    const far = await trial.done("desk", showToday, {}, later(300));
    expect([...far.arrivals, ...far.collections]).toEqual([]);
  });

  test("money is not a technician's to chase", async () => {
    const { owed, worksOnTheFloorOnly } = await trial.done("technician", showToday, {});
    expect(worksOnTheFloorOnly).toBe(true);
    expect(owed.filter(({ kind }) => kind === "deposit" || kind === "lapses-now")).toEqual([]);
  });

  test("another workshop's is its own", async () => {
    const ours = await trial.done("desk", showToday, {});
    const theirs = await trial.done("gulfDesk", showToday, {});
    const ids = new Set(ours.owed.map(({ action }) => action.id));
    expect(theirs.owed.filter(({ action }) => ids.has(action.id))).toEqual([]);
  });
});
