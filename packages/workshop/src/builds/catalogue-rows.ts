import type { Condition, GroupPick } from "@buildproof/prerequisites";
import type { MinorUnits } from "@buildproof/units";
import type { CapacityAmount } from "./capacity-amount";
import type { SystemCode } from "./systems";

/** What the workshop sells and knows, as the build sheet works with it. */
export type Catalogue = {
  readonly items: readonly CatalogueItem[];
  readonly access: readonly CatalogueAccess[];
  readonly operations: readonly CatalogueOperation[];
  readonly groups: readonly CatalogueGroup[];
  readonly rules: readonly CatalogueRule[];
  readonly packages: readonly CataloguePackage[];
};

export type CatalogueItem = {
  readonly id: string;
  readonly code: string;
  readonly name: string;
  readonly system: SystemCode;
  readonly kind: string;
  /** What it is on the vehicle: blower, pulley, pump …; empty: nothing in particular. */
  readonly component: string;
  readonly maker: string;
  readonly supplier: string;
  readonly note: string;
  /** Of one, without tax. */
  readonly priceMinor: MinorUnits;
  readonly costMinor: MinorUnits;
  readonly leadDays: number;
  readonly inStock: number;
  readonly massKg: number;
  readonly returnable: boolean;
  readonly oneUse: boolean;
  readonly serialised: boolean;
  /** What the engineering needs to know of it, as it is stored. */
  readonly figures: unknown;
  /** Codes of the models it fits; empty: all. */
  readonly fits: readonly string[];
  readonly operations: readonly string[];
  /** No longer sold; a build that has it keeps it. */
  readonly retired: boolean;
};

export type Rate = "workshop" | "dyno";

export type CatalogueAccess = {
  readonly code: string;
  readonly name: string;
  /** A decimal as text. */
  readonly hours: string;
  readonly rate: Rate;
  readonly needs: readonly string[];
};

export type CatalogueOperation = {
  readonly code: string;
  readonly name: string;
  /** Its own work, without access; a decimal as text. */
  readonly hours: string;
  readonly rate: Rate;
  readonly access: readonly string[];
  readonly stage: string;
  readonly place: string;
};

export type CatalogueGroup = {
  readonly code: string;
  readonly name: string;
  readonly pick: GroupPick;
  readonly items: readonly string[];
};

export type CatalogueRule = {
  readonly code: string;
  readonly because: string;
  readonly source: string;
  readonly safety: boolean;
  /** Codes of the models it concerns; empty: all. */
  readonly models: readonly string[];
} & (
  | { readonly kind: "needs" | "excludes"; readonly when: Condition | null; readonly then: Condition }
  | {
      readonly kind: "capacity";
      readonly quantity: string;
      readonly unit: string;
      readonly link: string;
      readonly baseFact: string;
      readonly supply: Readonly<Record<string, CapacityAmount>>;
      readonly demand: Readonly<Record<string, CapacityAmount>>;
      readonly reservePct: number;
    }
);

export type CataloguePackage = {
  readonly code: string;
  readonly name: string;
  readonly outcome: string;
  readonly models: readonly string[];
  /** Always in it. */
  readonly items: readonly string[];
  /** The customer decides among these. */
  readonly choices: readonly {
    readonly name: string;
    readonly pick: GroupPick;
    readonly items: readonly string[];
  }[];
  /** May be added to it. */
  readonly options: readonly string[];
  readonly promise: PackagePromise | null;
  /** The braked trailer that it is made to tow; null where it promises none. */
  readonly promisedTowKg: number | null;
  readonly assumptions: readonly string[];
  readonly exclusions: readonly string[];
  readonly cautions: readonly string[];
};

/** Power promised as a band, at a stated place and reference condition. */
export type PackagePromise = {
  readonly at: "hubs";
  readonly lowKw: number;
  readonly highKw: number;
  readonly referenceCondition: string;
  readonly remedy: string;
  readonly boostKPa?: number | undefined;
};
