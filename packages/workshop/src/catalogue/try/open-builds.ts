import type { Transaction } from "@buildproof/database";

export type OpenBuild = {
  readonly id: string;
  readonly number: number;
  readonly is: "sample" | "quote" | "draft";
  readonly quote: { readonly id: string; readonly number: number } | null;
  readonly customer: string;
  readonly vehicle: string;
};

/**
 * The builds that a change of the catalogue is tried against: the samples, those of every open quote, and those
 * not quoted yet; at most so many, the last changed first.
 */
export async function openBuilds(
  tx: Transaction,
  most: number,
): Promise<{ readonly builds: readonly OpenBuild[]; readonly more: number }> {
  const isOpen = { in: ["draft" as const, "issued" as const] };
  const where = {
    OR: [
      { sampleBuilds: { some: {} } },
      { jobs: { none: {} }, quotes: { some: { versions: { some: { status: isOpen } } } } },
      { jobs: { none: {} }, quotes: { none: {} } },
    ],
  };
  const rows = await tx.build.findMany({
    where,
    orderBy: { updatedAt: "desc" },
    include: {
      customer: { select: { name: true } },
      vehicle: { include: { vehicleModel: { select: { name: true } } } },
      sampleBuilds: { select: { id: true } },
      quotes: {
        where: { versions: { some: { status: isOpen } } },
        orderBy: { number: "desc" },
        take: 1,
        select: { id: true, number: true },
      },
    },
  });
  const builds = rows.map((row): OpenBuild => {
    const quote = row.quotes[0] ?? null;
    return {
      id: row.id,
      number: row.number,
      is: row.sampleBuilds.length > 0 ? "sample" : quote ? "quote" : "draft",
      quote,
      customer: row.customer.name,
      vehicle: row.vehicle.vehicleModel.name,
    };
  });
  const order = ["sample", "quote", "draft"];
  const ordered = builds.toSorted((one, other) => order.indexOf(one.is) - order.indexOf(other.is));
  return { builds: ordered.slice(0, most), more: Math.max(0, ordered.length - most) };
}
