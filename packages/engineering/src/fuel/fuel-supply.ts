import { refuseOutside } from "../question/refuse-outside";
import { checkFuelStages } from "./check-fuel-stages";
import type { Fuel } from "./fuel-properties";
import type { FuelPath, FuelStage, FuelStageKind, FuelSupplyQuestion } from "./fuel-stage";
import { type StageSupply, stageSupply } from "./stage-supply";

export type FuelLimit = {
  readonly kind: FuelStageKind;
  readonly fuelKgPerH: number;
};

export type FuelSupply = { readonly stages: readonly StageSupply[]; readonly limit: FuelLimit };

/**
 * What a fuel system passes at one engine speed, and the stage that holds it back.
 *
 * @source  Mass balance: series stages carry everything, the port and the direct branch add up.
 * @vectors shared/reference/fuel.json
 * @throws  ImpossibleInputError for stages that no fuel system has.
 */
export function fuelSupply({ fuel, speedRpm, stages }: FuelSupplyQuestion): FuelSupply {
  refuseOutside(speedRpm, "speedRpm", 1, 30_000);
  checkFuelStages(stages, "stages");
  return checkedFuelSupply(fuel, speedRpm, stages);
}

/** The same for stages that have been checked: the sweeps ask it at every speed. */
export function checkedFuelSupply(fuel: Fuel, speedRpm: number, stages: readonly FuelStage[]): FuelSupply {
  const supplies = stages.map((stage) => stageSupply(stage, fuel, speedRpm));
  return { stages: supplies, limit: limitOf(supplies) };
}

/** Of equals, series binds before the branches, direct before port, and the earlier stage before the later. */
function limitOf(supplies: readonly StageSupply[]): FuelLimit {
  const series = smallest(supplies, "series");
  const branches = branchLimit(smallest(supplies, "direct"), smallest(supplies, "port"));
  if (!series && !branches) throw new RangeError("A fuel system has at least one stage.");
  if (!branches || (series && series.fuelKgPerH <= branches.fuelKgPerH)) return limit(series);
  return branches;
}

/** The smaller stage can be helped by the other branch, so the larger branch's stage is the one that binds. */
function branchLimit(direct: StageSupply | undefined, port: StageSupply | undefined): FuelLimit | undefined {
  if (!direct || !port) return (direct ?? port) && limit(direct ?? port);
  const larger = port.fuelKgPerH > direct.fuelKgPerH ? port : direct;
  return { kind: larger.kind, fuelKgPerH: port.fuelKgPerH + direct.fuelKgPerH };
}

function limit(stage: StageSupply | undefined): FuelLimit {
  if (!stage) throw new RangeError("A limit belongs to a stage.");
  return { kind: stage.kind, fuelKgPerH: stage.fuelKgPerH };
}

function smallest(supplies: readonly StageSupply[], path: FuelPath): StageSupply | undefined {
  let least: StageSupply | undefined;
  for (const stage of supplies) {
    if (stage.path === path && (!least || stage.fuelKgPerH < least.fuelKgPerH)) least = stage;
  }
  return least;
}
