import { catalogue } from "./catalogue/catalogue";
import type { CatalogueRows } from "./catalogue-rows";
import type { OwnedVehicle } from "./customer-rows";
import type { DemoWorkshop } from "./demo-workshop";
import { type PricedSelection, priceSelection } from "./price-selection";

export type DemoBuild = {
  readonly id: string;
  readonly number: number;
  readonly vehicle: OwnedVehicle;
  readonly goal: string;
  readonly packageCode: string | null;
  readonly itemCodes: readonly string[];
};

export function addBuild(
  workshop: DemoWorkshop,
  { itemId }: CatalogueRows,
  build: Omit<DemoBuild, "id" | "number"> & { readonly at: Date; readonly wantedBy?: string },
): DemoBuild {
  const { rows, id: workshopId, newId, nextNumber } = workshop;
  const { at, wantedBy, vehicle, goal, packageCode, itemCodes } = build;
  const id = newId(at);
  const number = nextNumber("build");
  rows.add("build", {
    id,
    workshopId,
    number,
    customerId: vehicle.customer.id,
    vehicleId: vehicle.id,
    goal,
    wantedBy: wantedBy ?? null,
    packageCode,
    createdAt: at,
    updatedAt: at,
  });
  itemCodes.forEach((code, position) => {
    rows.add("buildItem", {
      id: newId(at),
      workshopId,
      buildId: id,
      itemId: itemId(code),
      quantity: 1,
      position,
    });
  });
  return { id, number, vehicle, goal, packageCode, itemCodes };
}

type VersionStatus = "draft" | "issued" | "accepted" | "declined" | "lapsed" | "superseded";

export type WantedVersion = {
  readonly status: VersionStatus;
  readonly at: Date;
  readonly issuedById: string;
  /** The last day it can be accepted; the site's usual number of days unless said. */
  readonly validUntil?: string;
  readonly discountPct?: number;
  readonly declined?: { readonly at: Date; readonly because: string };
  readonly itemCodes?: readonly string[];
};

export type DemoQuote = {
  readonly id: string;
  readonly number: number;
  readonly build: DemoBuild;
  /** The newest version. */
  readonly versionId: string;
  readonly versionNo: number;
  readonly priced: PricedSelection;
};

export function addQuote(
  workshop: DemoWorkshop,
  build: DemoBuild,
  versions: readonly [WantedVersion, ...WantedVersion[]],
): DemoQuote {
  const { rows, id: workshopId, newId, nextNumber } = workshop;
  const at = versions[0].at;
  const id = newId(at);
  const number = nextNumber("quote");
  rows.add("quote", {
    id,
    workshopId,
    number,
    buildId: build.id,
    customerId: build.vehicle.customer.id,
    vehicleId: build.vehicle.id,
    createdAt: at,
  });
  const added = versions.map((version, index) => addVersion(workshop, build, id, index + 1, version));
  const newest = added.at(-1);
  if (!newest) throw new Error("a quote has a version");
  return { id, number, build, ...newest };
}

function addVersion(
  workshop: DemoWorkshop,
  build: DemoBuild,
  quoteId: string,
  versionNo: number,
  wanted: WantedVersion,
): Pick<DemoQuote, "versionId" | "versionNo" | "priced"> {
  const { rows, id: workshopId, newId, site, local } = workshop;
  const { at, status } = wanted;
  const itemCodes = wanted.itemCodes ?? build.itemCodes;
  const priced = priceSelection(site, itemCodes, wanted.discountPct);
  const bundle = catalogue.packages.find(({ id }) => id === build.packageCode);
  const { lines, items: _items, operations: _operations, access: _access, ...figures } = priced;
  const versionId = newId(at);
  rows.add("quoteVersion", {
    id: versionId,
    workshopId,
    quoteId,
    versionNo,
    status,
    validUntil: wanted.validUntil ?? local.dayOf(at).add({ days: site.quoteValidDays }).toString(),
    issuedAt: status === "draft" ? null : at,
    issuedById: status === "draft" ? null : wanted.issuedById,
    currency: site.currency,
    ...figures,
    ...(bundle?.promise ? { promise: { ...bundle.promise } } : {}),
    selection: { items: itemCodes.map((code) => ({ code, quantity: 1 })), findings: [] },
    goal: build.goal,
    inclusions: [bundle?.outcome ?? "Parts, labour and paperwork as listed."],
    exclusions: [...(bundle?.exclusions ?? [])],
    assumptions: [...(bundle?.assumptions ?? [])],
    cautions: [...(bundle?.cautions ?? [])],
    note: "",
    declinedAt: wanted.declined?.at ?? null,
    declinedBecause: wanted.declined?.because ?? "",
    createdAt: at,
  });
  lines.forEach((line, position) => {
    rows.add("quoteLine", { id: newId(at), workshopId, versionId, position, ...line, taxCategory: "S" });
  });
  return { versionId, versionNo, priced };
}

/** The customer's yes to the newest version. Addresses are of the block set aside for documentation (RFC 5737). */
export function addAcceptance(workshop: DemoWorkshop, quote: DemoQuote, at: Date): void {
  const { rows, id: workshopId, newId, random } = workshop;
  const { name } = quote.build.vehicle.customer;
  rows.add("acceptance", {
    id: newId(at),
    workshopId,
    versionId: quote.versionId,
    name,
    at,
    address: `203.0.113.${random.integer(1, 254)}`,
    statement: `${name} accepts quote ${quote.number}, version ${quote.versionNo}.`,
  });
}

export function addPayment(
  workshop: DemoWorkshop,
  quote: DemoQuote,
  payment: {
    readonly kind: "deposit" | "balance" | "refund";
    readonly amountMinor: number;
    readonly at: Date;
    readonly recordedById: string;
  },
): void {
  const { rows, id: workshopId, newId, random, local } = workshop;
  const { at, ...rest } = payment;
  if (rest.amountMinor <= 0) return;
  rows.add("payment", {
    id: newId(at),
    workshopId,
    quoteId: quote.id,
    ...rest,
    heldAs: rest.kind === "deposit" ? "security" : "",
    method: random.pick(["transfer", "transfer", "card"]),
    reference: `Q${quote.number}`,
    receivedOn: local.dayOf(at).toString(),
    recordedAt: at,
  });
}
