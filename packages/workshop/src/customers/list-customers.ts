import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";

const LONGEST_LIST = 100;

/** Customers by name; with a word, those whose name, telephone, e-mail or plate holds it. */
export const listCustomers = query({
  name: "customers.list",
  permission: "customers:read",
  input: z.strictObject({ search: z.string().trim().max(100, "Search for at most 100 characters.") }),
  async run({ tx }, { search }) {
    const holds = { contains: search, mode: "insensitive" } as const;
    const rows = await tx.customer.findMany({
      where:
        search === ""
          ? {}
          : {
              OR: [
                { name: holds },
                { phone: holds },
                { email: holds },
                { vehicles: { some: { plate: holds } } },
              ],
            },
      orderBy: [{ name: "asc" }, { id: "asc" }],
      take: LONGEST_LIST + 1,
      include: {
        vehicles: { include: { vehicleModel: true }, orderBy: { createdAt: "desc" } },
        _count: { select: { jobs: true } },
      },
    });
    return ok({
      hasMore: rows.length > LONGEST_LIST,
      customers: rows.slice(0, LONGEST_LIST).map(({ id, name, phone, email, vehicles, _count }) => ({
        id,
        name,
        phone,
        email,
        vehicles: vehicles.map((vehicle) => ({
          id: vehicle.id,
          plate: vehicle.plate,
          model: vehicle.vehicleModel.name,
        })),
        jobs: _count.jobs,
      })),
    });
  },
});
