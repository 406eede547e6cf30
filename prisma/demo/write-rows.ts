import type { Transaction } from "@buildproof/database";
import { type DemoRows, type Row, type Table, tables } from "./demo-rows";

const CHUNK = 4_000;

type Column = { readonly name: string; readonly isEnum: boolean };

/** Writes every row, in an order that the database accepts, within the given transaction. */
export async function writeRows(transaction: Transaction, rows: DemoRows): Promise<void> {
  const columns = await readColumns(transaction);
  for (const table of tables) {
    await insert(transaction, table, table === "quoteVersion" ? asDrafts(rows) : rows.of(table), columns);
    // Lines are written while their version is a draft; then it goes the way a real one goes.
    if (table === "quoteLine") await moveVersionsOn(transaction, rows.of("quoteVersion"));
  }
}

const asDrafts = (rows: DemoRows) =>
  rows.of("quoteVersion").map((version) => ({ ...version, status: "draft" as const }));

async function moveVersionsOn(transaction: Transaction, versions: readonly Row<"quoteVersion">[]) {
  const go = async (to: string, taken: (version: Row<"quoteVersion">) => boolean) => {
    const ids = versions.filter(taken).map((version) => version.id);
    await transaction.$executeRawUnsafe(
      "update quote_version set status = $1::quote_status where id = any($2::uuid[])",
      to,
      ids,
    );
  };
  await go("superseded", (version) => version.status === "superseded");
  await go("issued", (version) => version.status !== "draft" && version.status !== "superseded");
  for (const end of ["accepted", "declined", "lapsed"]) await go(end, (version) => version.status === end);
}

/** One statement per few thousand rows: the server unpacks them from JSON, several times faster than parameters. */
async function insert(
  transaction: Transaction,
  table: Table,
  rows: readonly object[],
  columns: ReadonlyMap<string, ReadonlyMap<string, Column>>,
): Promise<void> {
  if (rows.length === 0) return;
  const name = snakeCase(table);
  const known = columns.get(name);
  if (!known) throw new Error(`there is no table ${name}`);
  const used = new Map<string, Column>();
  for (const row of rows) {
    for (const key of Object.keys(row)) {
      if (used.has(key)) continue;
      const column = known.get(key.toLowerCase());
      if (!column) throw new Error(`the table ${name} has no column for ${key}`);
      used.set(key, column);
    }
  }
  const list = [...used.values()].map((column) => `"${column.name}"`).join(", ");
  const sql = `insert into "${name}" (${list}) select ${list} from json_populate_recordset(null::"${name}", $1::json)`;
  for (let start = 0; start < rows.length; start += CHUNK) {
    const chunk = rows.slice(start, start + CHUNK).map((row) => stored(row, used));
    await transaction.$executeRawUnsafe(sql, JSON.stringify(chunk, bigintAsText));
  }
}

function stored(row: object, used: ReadonlyMap<string, Column>): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(row)) {
    const column = used.get(key);
    if (!column) continue;
    result[column.name] = column.isEnum && typeof value === "string" ? snakeCase(value, true) : value;
  }
  return result;
}

const bigintAsText = (_key: string, value: unknown) => (typeof value === "bigint" ? value.toString() : value);

/** `doneUnpaid` → `done_unpaid`; enum values of one capital letter stay as they are. */
function snakeCase(name: string, isEnumValue = false): string {
  if (isEnumValue && name.length === 1) return name;
  return name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

/** Columns by table, each under its name in lower case without underscores, as the schema's own names read. */
async function readColumns(transaction: Transaction): Promise<Map<string, Map<string, Column>>> {
  const found = await transaction.$queryRawUnsafe<
    { table_name: string; column_name: string; data_type: string }[]
  >(
    "select table_name::text, column_name::text, data_type::text from information_schema.columns where table_schema = 'public'",
  );
  const columns = new Map<string, Map<string, Column>>();
  for (const { table_name, column_name, data_type } of found) {
    const ofTable = columns.get(table_name) ?? new Map<string, Column>();
    columns.set(table_name, ofTable);
    ofTable.set(column_name.replaceAll("_", "").toLowerCase(), {
      name: column_name,
      isEnum: data_type === "USER-DEFINED",
    });
  }
  return columns;
}
