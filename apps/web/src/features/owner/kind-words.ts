import { type CostKind, costKinds } from "@buildproof/workshop";

export const kindWords: Record<CostKind, string> = {
  parts: "Parts and materials",
  labour: "Labour",
  boughtIn: "Bought-in work",
  dyno: "Dyno",
  rework: "Rework",
  other: "Other costs",
};

/** As it stands in an address. */
export const kindPaths: Record<CostKind, string> = {
  parts: "parts",
  labour: "labour",
  boughtIn: "bought-in",
  dyno: "dyno",
  rework: "rework",
  other: "other",
};

/** The kind that an address names; null when it names none. */
export function kindAt(path: string): CostKind | null {
  return costKinds.find((kind) => kindPaths[kind] === path) ?? null;
}

/** What the figures of a kind are made of. */
export const kindSources: Record<CostKind, string> = {
  parts:
    "Quoted: every item and fee at the cost on the quote. Actual: suppliers’ invoices recorded on the job.",
  labour:
    "Quoted: hours of operations and access work. Actual: every stopped clock entry at the cost of an hour.",
  boughtIn: "Quoted: work of others on the quote. Actual: their invoices recorded on the job.",
  dyno: "Quoted: dyno hours on the quote. Actual: dyno hours charged to the job, with the operator.",
  rework: "Never quoted: what jobs cost that came back.",
  other: "Never quoted: loan cars, card fees, freight and the like.",
};
