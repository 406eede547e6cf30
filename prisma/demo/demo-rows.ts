import type { Transaction } from "@buildproof/database";

/** Tables in the order in which their rows can be written. */
export const tables = [
  "workshop",
  "site",
  "person",
  "resource",
  "counter",
  "storedFile",
  "vehicleModel",
  "item",
  "accessWork",
  "operation",
  "procedureStep",
  "itemGroup",
  "rule",
  "package",
  "customer",
  "vehicle",
  "build",
  "buildItem",
  "inspection",
  "quote",
  "quoteVersion",
  "quoteLine",
  "acceptance",
  "payment",
  "job",
  "goodsIn",
  "booking",
  "checkIn",
  "jobStep",
  "stepEntry",
  "fault",
  "clockEntry",
  "jobCost",
  "dynoSession",
  "dynoRun",
  "verdict",
  "obligation",
  "evidence",
  "handOver",
  "auditEvent",
] as const;

export type Table = (typeof tables)[number];

type Data<T extends Table> = NonNullable<Parameters<Transaction[T]["createMany"]>[0]>["data"];

/** What a row of that table must and may hold, as the schema has it. */
export type Row<T extends Table> = Extract<Data<T>, readonly unknown[]>[number];

/** Rows waiting to be written; rows of one table all carry the same keys, or leave out nullable ones. */
export type DemoRows = {
  readonly add: <T extends Table>(table: T, row: Row<T>) => Row<T>;
  readonly of: <T extends Table>(table: T) => readonly Row<T>[];
};

export function demoRows(): DemoRows {
  const kept = new Map<Table, unknown[]>(tables.map((table) => [table, []]));
  return {
    add: (table, row) => {
      kept.get(table)?.push(row);
      return row;
    },
    // Only `add` writes here, and it pairs each table with its own row type.
    of: <T extends Table>(table: T) => (kept.get(table) ?? []) as Row<T>[],
  };
}
