import { z } from "zod";
import { ok } from "../core/result";
import { isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";

const LONGEST_LIST = 100;

/** Builds, the one changed last first; with a word, those whose owner, plate, model, goal or number holds it. */
export const listBuilds = query({
  name: "builds.list",
  permission: "builds:read",
  input: z.strictObject({ search: z.string().trim().max(100, "Search for at most 100 characters.") }),
  async run({ tx }, { search }) {
    const holds = { contains: search, mode: "insensitive" } as const;
    const number = /^\d{1,9}$/.test(search) ? Number(search) : null;
    const rows = await tx.build.findMany({
      where:
        search === ""
          ? {}
          : {
              OR: [
                { customer: { name: holds } },
                { vehicle: { plate: holds } },
                { vehicle: { vin: holds } },
                { vehicle: { vehicleModel: { name: holds } } },
                { goal: holds },
                { items: { some: { item: { name: holds } } } },
                ...(number === null ? [] : [{ number }]),
              ],
            },
      orderBy: { updatedAt: "desc" },
      take: LONGEST_LIST + 1,
      include: {
        customer: true,
        vehicle: { include: { vehicleModel: true } },
        quotes: { orderBy: { number: "desc" }, take: 1, select: { id: true, number: true } },
        jobs: { orderBy: { number: "desc" }, take: 1, select: { id: true, number: true, status: true } },
      },
    });
    return ok({
      hasMore: rows.length > LONGEST_LIST,
      builds: rows.slice(0, LONGEST_LIST).map((row) => ({
        id: row.id,
        number: row.number,
        goal: row.goal,
        wantedBy: row.wantedBy ? isoDateOf(row.wantedBy) : null,
        changedAt: row.updatedAt,
        customer: { id: row.customer.id, name: row.customer.name },
        vehicle: { id: row.vehicle.id, plate: row.vehicle.plate, model: row.vehicle.vehicleModel.name },
        quote: row.quotes[0] ?? null,
        job: row.jobs[0] ?? null,
      })),
    });
  },
});
