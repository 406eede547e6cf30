/**
 * The shape of the demo catalogue: plain data, no database. Money is integer cents without tax, hours are
 * workshop hours, masses are kilograms. Every rule of the trade in it is common practice, no source.
 */

export const commonPractice = "common practice, no source";

export type ModelId =
  | "ridgewold-57"
  | "ridgewold-57-lift"
  | "vale-30td"
  | "orrismere-gt44"
  | "bramlet-trail-20";

export interface VehicleModel {
  readonly id: ModelId;
  readonly maker: string;
  readonly name: string;
  readonly body: string;
  readonly engine: string;
  readonly displacementL: number;
  readonly cylinders: number;
  readonly compressionRatio: number;
  readonly injection: "direct" | "port";
  readonly aspiration: "natural" | "turbo";
  readonly fuelKind: "petrol" | "diesel";
  readonly gearbox: string;
  readonly driven: "front" | "rear" | "all";
  readonly standardTyre: string;
  readonly kerbMassKg: number;
  /** A healthy standard vehicle at the hubs, corrected; what a baseline is compared with. */
  readonly usualHubPowerKw: number;
  readonly usualHubTorqueNm: number;
  /** What the model is and has, by the names the rules use; a fact that is missing is 0. */
  readonly facts: Readonly<Record<string, number>>;
  /** What the engineering needs to know of it, by name with unit. */
  readonly figures?: Figures;
}

export type SystemId =
  | "air"
  | "fuel"
  | "ignition-calibration"
  | "exhaust"
  | "driveline"
  | "wheels-tyres"
  | "brakes"
  | "towing"
  | "appearance"
  | "operations"
  | "fees";

/** `duty` is something the vehicle is asked to do (a fuel, a trailer): it costs nothing and demands much. */
export type ItemKind =
  | "part"
  | "kit"
  | "consumable"
  | "calibration"
  | "operation"
  | "bought-in"
  | "fee"
  | "duty";

export type Figure = number | string | boolean | readonly Figure[] | { readonly [name: string]: Figure };

export interface Figures {
  readonly [name: string]: Figure;
}

export interface CatalogueItem {
  readonly id: string;
  readonly code: string;
  readonly name: string;
  readonly system: SystemId;
  readonly kind: ItemKind;
  readonly maker: string;
  /** Sell and cost of one, in cents without tax; the labour of its operations is priced by hours. */
  readonly priceCents: number;
  readonly costCents: number;
  readonly leadDays: number;
  readonly massKg: number;
  readonly returnable: boolean;
  /** Fitted once: taking it off again calls for a new one. */
  readonly oneUse: boolean;
  /** Carries a serial or licence number that is recorded when it is fitted. */
  readonly serialised: boolean;
  /** What the engineering needs to know of it, by name with unit. */
  readonly figures: Figures;
  readonly fits: readonly ModelId[];
  /** Labour that comes with choosing it. */
  readonly operations: readonly string[];
  readonly note?: string;
}

/** Which rate an hour is charged at; a dyno hour includes its operator. */
export type HourRate = "workshop" | "dyno";

export type JobStage =
  | "inspection"
  | "teardown"
  | "fitting"
  | "first-start"
  | "calibration"
  | "proof"
  | "road-test"
  | "hand-over"
  | "after";

export type StepKind = "tick" | "measurement" | "torque" | "photo" | "serial" | "hold-point";

export interface ProcedureStep {
  /** Stable within its operation. */
  readonly id: string;
  readonly text: string;
  readonly kind: StepKind;
  /** For measurement and torque: the unit and the limits, both inclusive; a torque's are the maker's figure. */
  readonly unit?: string;
  readonly low?: number;
  readonly target?: number;
  readonly high?: number;
  /** Said before the step is done. */
  readonly cautions?: readonly string[];
  /** A part that must be new, on the trolley before this step begins. */
  readonly oneUsePart?: string;
  /** For hold points: who must sign. */
  readonly signer?: "second-person" | "signatory";
}

/** Teardown and refit that several operations share; counted once in a visit. */
export interface AccessWork {
  readonly id: string;
  readonly name: string;
  readonly hours: number;
  readonly rate: HourRate;
  readonly needs: readonly string[];
  readonly out: readonly ProcedureStep[];
  readonly back: readonly ProcedureStep[];
}

export interface Operation {
  readonly id: string;
  readonly name: string;
  /** Its own work, without access. */
  readonly ownHours: number;
  readonly rate: HourRate;
  readonly access: readonly string[];
  readonly stage: JobStage;
  /** Where in the job it comes; smaller first. */
  readonly order: number;
  readonly skill: "mechanical" | "electrical" | "dyno" | "calibration" | "desk";
  readonly place: "hoist" | "dyno" | "road" | "floor" | "desk" | "bought-in";
  readonly steps: readonly ProcedureStep[];
}

export type Condition =
  | { readonly item: string }
  | { readonly fact: string; readonly atLeast: number }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };

/** A link of the chain that a capacity is drawn on. */
export type ChainLink =
  | "belt-drive"
  | "cooler"
  | "radiator"
  | "tank-pump"
  | "high-pressure-pump"
  | "injection-window"
  | "gearbox"
  | "clutch"
  | "alternator"
  | "payload"
  | "front-axle"
  | "rear-axle"
  | "brakes"
  | "combination"
  | "towing";

interface RuleHead {
  readonly id: string;
  readonly because: string;
  readonly source: string;
  readonly models: readonly ModelId[];
  /** A safety rule is never overridden. */
  readonly safety: boolean;
}

export interface NeedsRule extends RuleHead {
  readonly kind: "needs";
  readonly when?: Condition;
  readonly then: Condition;
}

export interface ExcludesRule extends RuleHead {
  readonly kind: "excludes";
  readonly when?: Condition;
  readonly then: Condition;
}

/** Plain, or that of a whole part in place of a standard one, which the vehicle has a fact for. */
export type Amount = number | { readonly whole: number; readonly lessFact: string };

export interface CapacityRule extends RuleHead {
  readonly kind: "capacity";
  /** In words, without the unit. */
  readonly quantity: string;
  readonly unit: string;
  readonly link: ChainLink;
  /** The fact of the model (or of this very vehicle) that the base is read from. */
  readonly baseFact: string;
  readonly supply: Readonly<Record<string, Amount>>;
  readonly demand: Readonly<Record<string, Amount>>;
  readonly reservePct: number;
}

export type CatalogueRule = NeedsRule | ExcludesRule | CapacityRule;

export interface ItemGroup {
  readonly id: string;
  readonly name: string;
  readonly pick: "at-most-one" | "exactly-one" | "at-least-one";
  readonly items: readonly string[];
}

/** Power that is promised, always as a band, always at a stated place and reference condition. */
export interface PowerPromise {
  readonly at: "hubs";
  readonly lowKw: number;
  readonly highKw: number;
  readonly referenceCondition: string;
  readonly remedy: string;
}

export interface CataloguePackage {
  readonly id: string;
  readonly name: string;
  readonly models: readonly ModelId[];
  /** What the owner will notice, in one sentence. */
  readonly outcome: string;
  readonly items: readonly string[];
  readonly promise: PowerPromise | null;
  readonly assumptions: readonly string[];
  readonly exclusions: readonly string[];
  readonly cautions: readonly string[];
}

export interface Catalogue {
  readonly models: readonly VehicleModel[];
  readonly items: readonly CatalogueItem[];
  readonly access: readonly AccessWork[];
  readonly operations: readonly Operation[];
  readonly groups: readonly ItemGroup[];
  readonly rules: readonly CatalogueRule[];
  readonly packages: readonly CataloguePackage[];
}
