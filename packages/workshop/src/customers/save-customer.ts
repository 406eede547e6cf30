import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { command, query } from "../core/use-case";
import { customerFields, isReachable, reachableMessage } from "./customer-fields";
import { refuseCustomer } from "./customer-refusals";
import { sameContact } from "./same-contact";

/** Adds a customer. Others with the same telephone or e-mail are named, and adding goes ahead. */
export const addCustomer = command({
  name: "customers.add",
  permission: "customers:write",
  input: z.strictObject(customerFields).refine(isReachable, reachableMessage),
  async run({ tx, workshopId, now, audit }, customer) {
    const id = newId();
    const alike = await sameContact(tx, customer);
    await tx.customer.create({ data: { id, workshopId, ...customer, createdAt: now } });
    audit({ entity: "customer", entityId: id, after: customer });
    return ok({ id, name: customer.name, alike: alike.map(({ name }) => name) });
  },
});

/** Changes what is kept of a customer. */
export const editCustomer = command({
  name: "customers.edit",
  permission: "customers:write",
  input: z
    .strictObject({ customerId: z.uuid("Open the customer again."), revision, ...customerFields })
    .refine(isReachable, reachableMessage),
  async run({ tx, audit }, { customerId, revision: seen, ...fields }) {
    const before = await tx.customer.findUnique({ where: { id: customerId } });
    if (!before) return refuseCustomer("customer-not-found");
    const { count } = await tx.customer.updateMany({
      where: { id: customerId, revision: seen },
      data: { ...fields, revision: { increment: 1 } },
    });
    if (count === 0) return refuseCustomer("stale-customer");
    const { name, phone, email, address, taxNumber, notes } = before;
    audit({
      entity: "customer",
      entityId: customerId,
      before: { name, phone, email, address, taxNumber, notes },
      after: fields,
    });
    return ok({ revision: seen + 1 });
  },
});

/** Who has the same telephone number or e-mail address already. */
export const findAlike = query({
  name: "customers.find-alike",
  permission: "customers:read",
  input: z.strictObject({
    phone: z.string().trim().max(40),
    email: z.string().trim().max(254),
    exceptId: z.uuid().nullable(),
  }),
  async run({ tx }, { exceptId, ...contact }) {
    return ok({ alike: await sameContact(tx, contact, exceptId) });
  },
});
