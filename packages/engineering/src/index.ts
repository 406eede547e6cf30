export { blower } from "./air/blower";
export type { BlowerPoint, BlowerQuestion } from "./air/blower-question";
export { crankPower, deliveredPower, type PowerPlace, powerPlaces } from "./driveline/driveline-loss";
export { correctionFormula } from "./dyno/correction-formula";
export {
  type Aspiration,
  aspirations,
  type Correction,
  type CorrectionEdition,
  type CorrectionQuestion,
  type CorrectionStandard,
  type CorrectionWarning,
  correctionEditions,
  correctionStandards,
  type Ignition,
  ignitions,
} from "./dyno/correction-question";
export { correctionLimits } from "./dyno/correction-validity";
export { type DriveSlip, driveSlip, explainDriveSlip, SLIP_LIMIT_PCT } from "./dyno/drive-slip";
export type { DriveTrace } from "./dyno/drive-trace";
export { dynoCorrection } from "./dyno/dyno-correction";
export { explainCorrectionWarning } from "./dyno/explain-correction-warning";
export { exclusionWords, explainRunRefusal, explainRunWarning } from "./dyno/explain-run";
export { explainHeatSoak, explainOutlier } from "./dyno/explain-run-spread";
export { explainVerdict } from "./dyno/explain-verdict";
export { gain } from "./dyno/gain";
export { type MeanPoint, meanCurve } from "./dyno/mean-curve";
export type {
  Gain,
  GainPoint,
  PowerPromise,
  Repeatability,
  Verdict,
  VerdictReason,
} from "./dyno/proof-figures";
export type {
  ChannelExtremes,
  DisagreementCause,
  ExclusionReason,
  Exclusions,
  Peak,
  ReducedRun,
  RunAccumulator,
  RunPoint,
  RunRefusal,
  RunSettings,
  RunWarning,
} from "./dyno/reduced-run";
export { FEWEST_RUNS, repeatability, SPREAD_LIMIT_PCT } from "./dyno/repeatability";
export { reduceRun, runAccumulator } from "./dyno/run-accumulator";
export { type RunChannel, type RunRow, runChannels } from "./dyno/run-row";
export { runSpread } from "./dyno/run-spread";
export { saturationPressure } from "./dyno/saturation-pressure";
export { verdict } from "./dyno/verdict";
export { explainFuelShortfall } from "./fuel/explain-fuel-shortfall";
export { type FuelDemand, type FuelDemandQuestion, fuelDemand } from "./fuel/fuel-demand";
export { type FuelHeadroom, type FuelShortfall, fuelHeadroom, type LoadHeadroom } from "./fuel/fuel-headroom";
export { type Fuel, fuelProperties, fuels } from "./fuel/fuel-properties";
export { type FuelStage, type FuelStageKind, fuelPaths, fuelStageKinds } from "./fuel/fuel-stage";
export { type FuelLimit, type FuelSupply, fuelSupply } from "./fuel/fuel-supply";
export { type BoltTorque, type BoltTorqueQuestion, boltTorque } from "./joints/bolt-torque";
export { type PropertyClass, propertyClasses } from "./joints/property-class";
export { type AxleLoad, type AxleLoadsQuestion, axleLoads } from "./masses/axle-loads";
export {
  type MassBudget,
  type MassBudgetQuestion,
  massBudget,
  trailerWheelMassKg,
} from "./masses/mass-budget";
export { explainForecastLimit } from "./power/explain-forecast-limit";
export { assumptionNames, type ForecastAssumptions, forecastAssumptions } from "./power/forecast-assumptions";
export {
  type Forecast,
  type ForecastLimit,
  type ForecastPoint,
  type ForecastQuestion,
  forecastKinds,
  forecastLimits,
  injectionKinds,
} from "./power/forecast-question";
export { powerForecast } from "./power/power-forecast";
export { type Acceleration, acceleration } from "./road/acceleration";
export { type AccelerationQuestion, drivenAxles, type GearCurve } from "./road/acceleration-question";
export { type GearingChange, type GearingQuestion, gearingChange } from "./road/gearing";
export { type StandardAir, standardAtmosphere } from "./road/standard-atmosphere";
export { type SpeedometerAnswer, type SpeedometerQuestion, speedometer } from "./tyres/speedometer";
export { type Tyre, tyre } from "./tyres/tyre";
export { type TyreFitness, tyreFitness } from "./tyres/tyre-fitness";
