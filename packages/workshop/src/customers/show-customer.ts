import { z } from "zod";
import { mayDo } from "../core/permissions";
import { ok } from "../core/result";
import { isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";
import { refuseCustomer } from "./customer-refusals";
import { sameContact } from "./same-contact";

/** A customer with their vehicles, builds, quotes and jobs, the newest first. */
export const showCustomer = query({
  name: "customers.show",
  permission: "customers:read",
  input: z.strictObject({ customerId: z.uuid("Open the customer from the list.") }),
  async run({ tx, person }, { customerId }) {
    const row = await tx.customer.findUnique({
      where: { id: customerId },
      include: {
        vehicles: { include: { vehicleModel: true }, orderBy: { createdAt: "desc" } },
        builds: { include: { vehicle: true }, orderBy: { number: "desc" } },
        quotes: {
          include: { vehicle: true, versions: { orderBy: { versionNo: "desc" }, take: 1 } },
          orderBy: { number: "desc" },
        },
        jobs: { include: { vehicle: true }, orderBy: { number: "desc" } },
      },
    });
    if (!row) return refuseCustomer("customer-not-found");
    const { id, name, phone, email, address, taxNumber, notes, revision } = row;
    return ok({
      id,
      name,
      phone,
      email,
      address,
      taxNumber,
      notes,
      revision,
      alike: await sameContact(tx, row, id),
      vehicles: row.vehicles.map((vehicle) => ({
        id: vehicle.id,
        plate: vehicle.plate,
        vin: vehicle.vin,
        model: vehicle.vehicleModel.name,
        odometerKm: vehicle.odometerKm,
      })),
      builds: row.builds.map((build) => ({
        id: build.id,
        number: build.number,
        goal: build.goal,
        plate: build.vehicle.plate,
      })),
      /** Money is for those who read quotes. */
      quotes: mayDo("quotes:read", person.roles) ? row.quotes.map((quote) => quoteLine(quote)) : [],
      jobs: row.jobs.map((job) => ({
        id: job.id,
        number: job.number,
        status: job.status,
        plate: job.vehicle.plate,
      })),
    });
  },
});

function quoteLine(quote: {
  readonly id: string;
  readonly number: number;
  readonly vehicle: { readonly plate: string };
  readonly versions: readonly {
    readonly versionNo: number;
    readonly status: string;
    readonly validUntil: Date;
    readonly grossMinor: bigint;
    readonly currency: string;
  }[];
}) {
  const [newest] = quote.versions;
  return {
    id: quote.id,
    number: quote.number,
    plate: quote.vehicle.plate,
    version: newest
      ? {
          versionNo: newest.versionNo,
          status: newest.status,
          validUntil: isoDateOf(newest.validUntil),
          grossMinor: Number(newest.grossMinor),
          currency: newest.currency,
        }
      : null,
  };
}
