import type { ForecastQuestion, FuelStage } from "@buildproof/engineering";
import type { ItemFigures, ModelFigures, StoredCap } from "./stored-figures";

export type Assumed = NonNullable<ForecastQuestion["assumptions"]>;

export type ChosenFigures = { readonly code: string; readonly name: string; readonly figures: ItemFigures };

/** What the customer buys. */
export type FuelBought = {
  readonly fuelKind: "petrol" | "e10" | "e85" | "diesel";
  /** Research octane number; null where it is not known. */
  readonly fuelOctane: number | null;
};

type Blower =
  | Omit<Extract<ItemFigures["blower"], { kind: "displacement" }>, "needs">
  | Omit<Extract<ItemFigures["blower"], { kind: "centrifugal" }>, "needs">;

/** What the chosen items make of the engine. */
export type PowerChange = {
  readonly blower: Blower | null;
  readonly calibration: NonNullable<ItemFigures["calibration"]> | null;
  /** What exhaust and calibration do without a blower; null where no item does. */
  readonly breathing: NonNullable<ItemFigures["breathing"]> | null;
  readonly chargeCooler: NonNullable<ItemFigures["chargeCooler"]> | null;
  readonly fuel: ForecastQuestion["fuel"];
  readonly injection: ForecastQuestion["injection"];
  readonly stages: readonly FuelStage[];
  /** Those that hold in the gear of the dyno, and those of other gears. */
  readonly caps: readonly StoredCap[];
  /** What model and items make of the usual assumptions. */
  readonly assume: Assumed;
};

const fuelNames = { petrol: "petrol", e10: "E10", e85: "E85", diesel: "diesel" } as const;

/** The engine with the chosen items; of two of a kind the later one holds. */
export function powerChange(
  model: ModelFigures,
  chosen: readonly ChosenFigures[],
  bought: FuelBought,
): PowerChange {
  const figures = chosen.map((each) => each.figures);
  const burns = figures.flatMap((each) => each.burns ?? []);
  const added = figures.flatMap(({ fuelStages: stages }) => stages ?? []);
  const fuel = burns.findLast((each) => each.fuel)?.fuel ?? fuelNames[bought.fuelKind];
  return {
    blower: blowerOf(chosen),
    calibration: figures.flatMap(({ calibration }) => calibration ?? []).at(-1) ?? null,
    breathing: breathingOf(figures),
    chargeCooler: coolerOf(chosen),
    fuel,
    injection:
      model.injection === "direct" && added.some(({ kind }) => kind === "port-injectors")
        ? "port-direct"
        : model.injection,
    stages: fuelStages(model.fuel.stages, added),
    caps: capsOf(
      model.caps,
      figures.flatMap(({ caps }) => caps ?? []),
    ),
    assume: {
      ...model.engine.assume,
      ...octane(fuel, bought, burns),
      ...Object.assign({}, ...figures.map(({ assume }) => assume)),
    },
  };
}

/** The last one that is complete: a pulley of its own makes another duty point of the blower it belongs to. */
function blowerOf(chosen: readonly ChosenFigures[]): PowerChange["blower"] {
  const codes = new Set(chosen.map(({ code }) => code));
  const complete = chosen.flatMap(({ figures: { blower } }) => {
    if (!blower) return [];
    const { needs, ...alone } = blower;
    return needs === undefined || codes.has(needs) ? [alone] : [];
  });
  return complete.at(-1) ?? null;
}

/** What fills better adds up; of the rest the later item holds. */
function breathingOf(figures: readonly ItemFigures[]): PowerChange["breathing"] {
  const parts = figures.flatMap(({ breathing }) => breathing ?? []);
  if (parts.length === 0) return null;
  const fillingGain = parts.reduce((gain, part) => gain * (part.fillingGain ?? 1), 1);
  return { ...Object.assign({}, ...parts), fillingGain };
}

/** The best cooler that is complete. */
function coolerOf(chosen: readonly ChosenFigures[]): PowerChange["chargeCooler"] {
  const codes = new Set(chosen.map(({ code }) => code));
  const coolers = chosen.flatMap(({ figures: { chargeCooler } }) =>
    chargeCooler && (chargeCooler.needs === undefined || codes.has(chargeCooler.needs)) ? [chargeCooler] : [],
  );
  return coolers.toSorted((a, b) => a.effectiveness - b.effectiveness).at(-1) ?? null;
}

function fuelStages(standard: readonly FuelStage[], added: readonly FuelStage[]): readonly FuelStage[] {
  const byKind = new Map([...standard, ...added].map((stage) => [stage.kind, stage]));
  return [...byKind.values()];
}

function capsOf(standard: readonly StoredCap[], added: readonly StoredCap[]): readonly StoredCap[] {
  const byId = new Map([...standard, ...added].map((cap) => [cap.id, cap]));
  return [...byId.values()];
}

/** A map for poorer fuel holds the engine to it, whatever is in the tank. */
function octane(
  fuel: PowerChange["fuel"],
  { fuelOctane }: FuelBought,
  burns: readonly NonNullable<ItemFigures["burns"]>[],
): { readonly octaneNumber?: number } {
  if (fuel === "diesel" || fuel === "E85") return {};
  const numbers = [
    ...burns.flatMap(({ octaneNumber }) => octaneNumber ?? []),
    ...(fuelOctane ? [fuelOctane] : []),
  ];
  return numbers.length > 0 ? { octaneNumber: Math.min(...numbers) } : {};
}
