import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";

/** A list to choose from stays usable to about this many; beyond it, start from the customer's page. */
const LONGEST_CHOICE = 2_000;

/** Names to choose the owner of a vehicle from. */
export const customersToChoose = query({
  name: "customers.to-choose",
  permission: "customers:read",
  input: z.strictObject({}),
  async run({ tx }) {
    const customers = await tx.customer.findMany({
      orderBy: [{ name: "asc" }, { id: "asc" }],
      take: LONGEST_CHOICE,
      select: { id: true, name: true, phone: true },
    });
    return ok({ customers });
  },
});
