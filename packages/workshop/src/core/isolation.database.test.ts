import { beforeAll, describe, expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import { newId } from "./new-id";

const trial = demoWorkshop();
let home = "";
let away = "";
let tables: string[] = [];

beforeAll(async () => {
  const workshops = await trial.sql("select id, name from workshop");
  home = String(workshops.find((row) => row.name === "Saltbush Dyno & Driveline")?.id);
  away = String(workshops.find((row) => row.name === "Gulf Boost Works")?.id);
  const rows = await trial.sql(
    "select table_name from information_schema.columns where table_schema = 'public' and column_name = 'workshop_id' order by 1",
  );
  tables = rows.map((row) => String(row.table_name));
});

/** SQL as the application, inside the transaction of one workshop (or of none). */
function asApplication<Row>(workshopId: string | null, sql: string): Promise<Row[]> {
  const run = (tx: { $queryRawUnsafe(text: string): Promise<unknown> }) =>
    tx.$queryRawUnsafe(sql) as Promise<Row[]>; // Raw rows have no type of their own.
  return workshopId === null ? trial.database.asOutsider(run) : trial.database.inWorkshop(workshopId, run);
}

describe("the application's role", () => {
  test("is neither superuser nor owner, and cannot step round row security", async () => {
    const [role] = await trial.sql(
      "select rolsuper, rolbypassrls, rolcreatedb, rolcreaterole from pg_roles where rolname = 'buildproof_app'",
    );
    expect(role).toEqual({ rolsuper: false, rolbypassrls: false, rolcreatedb: false, rolcreaterole: false });
    const owned = await trial.sql(
      "select tablename from pg_tables where schemaname = 'public' and tableowner = 'buildproof_app'",
    );
    expect(owned).toEqual([]);
    const [me] = await asApplication<{ who: string }>(home, "select current_user::text as who");
    expect(me?.who).toBe("buildproof_app");
  });

  test("meets row security on every table that carries a workshop, and on the workshops themselves", async () => {
    const open = await trial.sql(
      "select relname from pg_class c join pg_namespace n on n.oid = c.relnamespace where n.nspname = 'public' and c.relkind = 'r' and not relrowsecurity and relname <> '_prisma_migrations'",
    );
    expect(open).toEqual([]);
  });
});

describe("another workshop's rows", () => {
  test("are there, so that this test can fail", async () => {
    const [count] = await trial.sql("select count(*)::int as rows from customer where workshop_id = $1", [
      away,
    ]);
    expect(Number(count?.rows)).toBeGreaterThan(0);
  });

  test("cannot be seen in any table", async () => {
    for (const table of tables) {
      const rows = await asApplication<{ workshop_id: string }>(
        home,
        `select distinct workshop_id from ${table}`,
      );
      expect({ table, seen: rows.filter((row) => row.workshop_id !== home) }).toEqual({ table, seen: [] });
      expect({ table, seen: await asApplication(null, `select workshop_id from ${table} limit 1`) }).toEqual({
        table,
        seen: [],
      });
    }
    const workshops = await asApplication<{ id: string }>(home, "select id from workshop");
    expect(workshops.map((row) => row.id)).toEqual([home]);
  });

  test("cannot be changed or removed in any table", async () => {
    for (const table of tables) {
      for (const statement of [
        `update ${table} set workshop_id = workshop_id where workshop_id = '${away}' returning workshop_id`,
        `delete from ${table} where workshop_id = '${away}' returning workshop_id`,
      ]) {
        const touched = await asApplication(home, statement).catch(refusedOutright);
        expect({ statement, touched }).toEqual({ statement, touched: [] });
      }
    }
  });

  test("cannot be added", async () => {
    const add = `insert into customer (id, workshop_id, name, phone, email) values ('${newId()}', '${away}', 'x', '', '') returning id`;
    await expect(asApplication(home, add)).rejects.toThrow(/row-level security/);
    await expect(asApplication(null, add)).rejects.toThrow(/row-level security/);
  });

  test("cannot be moved into", async () => {
    await expect(
      asApplication(home, `update customer set workshop_id = '${away}' returning id`),
    ).rejects.toThrow(/row-level security/);
  });

  test("cannot be pointed at, even by somebody who guessed an id", async () => {
    const [theirs] = await trial.sql("select id from customer where workshop_id = $1", [away]);
    const [model] = await trial.sql("select id from vehicle_model where workshop_id = $1", [home]);
    const point = `insert into vehicle (id, workshop_id, customer_id, vehicle_model_id, vin, plate, odometer_km, fuel_kind, uses)
      values ('${newId()}', '${home}', '${theirs?.id}', '${model?.id}', 'X', 'X', 1, 'petrol', '{}') returning id`;
    await expect(asApplication(home, point)).rejects.toThrow(/foreign key/i);
  });

  test("every foreign key between tenants' tables carries the workshop", async () => {
    const narrow = await trial.sql(
      `select conname from pg_constraint c
       where contype = 'f' and connamespace = 'public'::regnamespace and confrelid <> 'workshop'::regclass and array_length(conkey, 1) < 2`,
    );
    expect(narrow).toEqual([]);
  });
});

/** Tables whose rows nobody may change at all refuse the statement itself. */
function refusedOutright(error: unknown): never[] {
  if (/permission denied/.test(String(error))) return [];
  throw error;
}
