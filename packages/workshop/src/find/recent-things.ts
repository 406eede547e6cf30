import type { Transaction } from "@buildproof/database";
import type { FoundGroup } from "./found";

const HOW_MANY = 5;

/** What was worked on last: what the search shows before anything is typed. */
export async function recentThings(tx: Transaction, seesQuotes: boolean): Promise<readonly FoundGroup[]> {
  const withNames = { customer: true, vehicle: { include: { vehicleModel: true } } } as const;
  const builds = await tx.build.findMany({
    orderBy: { updatedAt: "desc" },
    take: HOW_MANY,
    include: withNames,
  });
  const quotes = seesQuotes
    ? await tx.quote.findMany({ orderBy: { number: "desc" }, take: HOW_MANY, include: withNames })
    : [];
  const customers = await tx.customer.findMany({ orderBy: { createdAt: "desc" }, take: HOW_MANY });
  const about = (row: (typeof builds)[number] | (typeof quotes)[number]) =>
    [row.customer.name, row.vehicle.plate, row.vehicle.vehicleModel.name]
      .filter((part) => part !== "")
      .join(" · ");
  return [
    {
      kind: "build",
      hits: builds.map((row) => ({ id: row.id, title: `Build ${row.number}`, detail: about(row) })),
    },
    {
      kind: "quote",
      hits: quotes.map((row) => ({ id: row.id, title: `Quote ${row.number}`, detail: about(row) })),
    },
    {
      kind: "customer",
      hits: customers.map(({ id, name, phone }) => ({ id, title: name, detail: phone })),
    },
  ];
}
