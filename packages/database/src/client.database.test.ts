import { randomUUID } from "node:crypto";
import { describe, expect, test } from "vitest";
import { databaseRefusal } from "./database-refusal";
import { testDatabase } from "./testing/test-database";

const db = testDatabase();

async function twoWorkshops(): Promise<[string, string]> {
  const ids: [string, string] = [randomUUID(), randomUUID()];
  for (const id of ids) await db().sql("insert into workshop (id, name) values ($1, $2)", [id, `Shop ${id}`]);
  return ids;
}

describe("the application's connection", () => {
  test("is neither superuser nor owner nor able to bypass row security", async () => {
    const [row] = await db().sql(
      "select rolsuper, rolbypassrls, rolcreaterole, rolcreatedb from pg_roles where rolname = 'buildproof_app'",
    );
    expect(row).toEqual({ rolsuper: false, rolbypassrls: false, rolcreaterole: false, rolcreatedb: false });
    const owned = await db().sql(
      "select relname from pg_class join pg_roles r on r.oid = relowner where rolname = 'buildproof_app'",
    );
    expect(owned).toEqual([]);
  });

  test("sees its own workshop and no other", async () => {
    const [one] = await twoWorkshops();
    const seen = await db().database.inWorkshop(one, (transaction) => transaction.workshop.findMany());
    expect(seen.map((workshop) => workshop.id)).toEqual([one]);
  });

  test("sees no workshop as an outsider, even on a connection that served one before", async () => {
    const [one] = await twoWorkshops();
    await db().database.inWorkshop(one, (transaction) => transaction.workshop.count());
    expect(await db().database.asOutsider((transaction) => transaction.workshop.count())).toBe(0);
  });

  test("cannot write a row into another workshop", async () => {
    const [one, other] = await twoWorkshops();
    const write = db().database.inWorkshop(one, (transaction) =>
      transaction.counter.create({
        data: { id: randomUUID(), workshopId: other, series: "planted", next: 1 },
      }),
    );
    const refusal = databaseRefusal(await write.catch((error: unknown) => error));
    expect(refusal?.kind).toBe("row-security");
    expect(await db().sql("select 1 from counter where workshop_id = $1", [other])).toEqual([]);
  });

  test("answers a ping", async () => {
    await expect(db().database.ping()).resolves.toBeUndefined();
  });
});

describe("two transactions that decide on what they read", () => {
  test("run again when they clash, so that both counts arrive", async () => {
    const [one] = await twoWorkshops();
    const add = () =>
      db().database.inWorkshop(
        one,
        async (transaction) => {
          const found = await transaction.counter.findFirst({ where: { series: "clash" } });
          if (found)
            await transaction.counter.update({ where: { id: found.id }, data: { next: found.next + 1 } });
          else
            await transaction.counter.create({
              data: { id: randomUUID(), workshopId: one, series: "clash", next: 1 },
            });
        },
        { isolation: "Serializable" },
      );
    await add();
    await Promise.all([add(), add()]);
    const [row] = await db().sql("select next from counter where workshop_id = $1", [one]);
    expect(row?.next).toBe(3);
  });
});

describe("a refusal of the database", () => {
  test("keeps the text of a trigger that raised it", async () => {
    const raised = db().database.asOutsider(
      (transaction) => transaction.$executeRaw`do $$ begin raise exception 'append_only: planted'; end $$`,
    );
    const refusal = databaseRefusal(await raised.catch((error: unknown) => error));
    expect(refusal).toMatchObject({ kind: "raised", message: "append_only: planted" });
  });

  test("names the constraint of a doubled key", async () => {
    const [one] = await twoWorkshops();
    const double = () =>
      db().database.inWorkshop(one, (transaction) =>
        transaction.counter.create({ data: { id: randomUUID(), workshopId: one, series: "twice", next: 1 } }),
      );
    await double();
    const refusal = databaseRefusal(await double().catch((error: unknown) => error));
    expect(refusal?.kind).toBe("unique");
  });

  test("is null for an error of our own", () => {
    expect(databaseRefusal(new RangeError("not the database"))).toBeNull();
  });
});
