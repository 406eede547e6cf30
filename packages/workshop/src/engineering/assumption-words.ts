import type { AssumptionName } from "./assumption-names";

type Words = { readonly label: string; readonly unit: string; readonly group: string };

const say = (group: string, label: string, unit = ""): Words => ({ group, label, unit });
const driveline = "From crank to hubs";
const air = "Air";
const friction = "Friction and gas exchange";
const mixture = "Mixture";
const spark = "Spark and knock";
const diesel = "Turbo-diesel";
const fuel = "Fuel";
const road = "The road";

/** What each assumption is called where people read and change it. */
export const assumptionWords: Readonly<Record<AssumptionName, Words>> = {
  meshEfficiency: say(driveline, "Share that the gears pass on"),
  meshBand: say(driveline, "That share, plus or minus"),
  dragKwAt6000: say(driveline, "Drag at 6,000 rpm", "kW"),
  dragBandKw: say(driveline, "Drag, plus or minus", "kW"),
  tyreEfficiency: say(driveline, "Share that tyres pass to rollers"),
  measuredBandShare: say(driveline, "Measured baseline, plus or minus", "share"),
  ratedBandShare: say(driveline, "Maker's rating, plus or minus", "share"),
  baselineManifoldDropKPa: say(air, "Manifold below ambient in the baseline", "kPa"),
  baselineChargeRiseC: say(air, "Charge above ambient in the baseline", "°C"),
  boostedFillingGain: say(air, "Filling under boost over the baseline's"),
  airBandShare: say(air, "Air, plus or minus", "share"),
  frictionBarAt3000: say(friction, "Friction at 3,000 rpm, mean pressure", "bar"),
  frictionBarAt6000: say(friction, "Friction at 6,000 rpm, mean pressure", "bar"),
  boostedFrictionFactor: say(friction, "Friction under boost over the baseline's"),
  pumpingShare: say(friction, "Share of the pressure rise that comes back"),
  backPressureKPaAt6000: say(friction, "Exhaust back pressure at 6,000 rpm", "kPa"),
  bypassDriveKw: say(friction, "Blower drive with the bypass open", "kW"),
  baselineLambda: say(mixture, "Lambda of the baseline"),
  boostedLambdaAt3000: say(mixture, "Lambda under boost at 3,000 rpm"),
  boostedLambdaAt6000: say(mixture, "Lambda under boost at 6,000 rpm"),
  bestLambda: say(mixture, "Lambda of best torque"),
  mixtureLoss: say(mixture, "Loss away from it, per lambda squared"),
  baselineRetardDeg: say(spark, "Spark retard of the baseline", "°"),
  retardAt60KPaDeg: say(spark, "Spark retard at 60 kPa, ratio 11, 98 octane", "°"),
  retardBandDeg: say(spark, "Spark retard, plus or minus", "°"),
  sparkLossPerDeg2: say(spark, "Loss per degree squared"),
  retardPerRatioDeg: say(spark, "Retard per point of compression ratio", "°"),
  retardPerOctaneDeg: say(spark, "Retard per octane under 98", "°"),
  octaneNumber: say(spark, "Octane number of the fuel", "RON"),
  ethanolRetardDeg: say(spark, "Change of retard on E85", "°"),
  portInjectionRetardDeg: say(spark, "Retard more with port injection", "°"),
  chargeRetardFromC: say(spark, "Charge temperature from which spark goes", "°C"),
  chargeCPerRetardDeg: say(spark, "Charge temperature per degree of spark", "°C"),
  chargeStopC: say(spark, "Charge temperature to stop at", "°C"),
  coolantFollowsDay: say(air, "How much of a hotter day the coolant follows", "share"),
  mechanicalEfficiency: say(diesel, "Mechanical efficiency"),
  dieselLambda: say(diesel, "Lambda of the baseline"),
  dieselLambdaBand: say(diesel, "That lambda, plus or minus"),
  dieselExhaustC: say(diesel, "Exhaust temperature of the baseline", "°C"),
  dieselExhaustBandC: say(diesel, "Exhaust temperature, plus or minus", "°C"),
  dieselChargeC: say(diesel, "Charge temperature at full load", "°C"),
  dieselRichLoss: say(diesel, "Loss as the mixture gets richer"),
  dieselBsfcGPerKwh: say(fuel, "Specific consumption", "g/kWh"),
  dieselAirExponent: say(diesel, "Share of thinner air that the turbocharger leaves"),
  referenceTempC: say(air, "Air temperature of the baseline", "°C"),
  referencePressureKPa: say(air, "Air pressure of the baseline", "kPa"),
  breathingBsfcGPerKwh: say(fuel, "Specific consumption on petrol, without boost", "g/kWh"),
  boostedBsfcGPerKwh: say(fuel, "Specific consumption on petrol, boosted", "g/kWh"),
  roadSlopePct: say(road, "Slope, uphill above 0", "%"),
  roadHeadwindKmh: say(road, "Headwind, from behind below 0", "km/h"),
  roadAltitudeM: say(road, "Altitude", "m"),
  sustainedEnrichment: say(fuel, "Richer under held load, as lambda"),
};

/** A figure with its unit; a degree stands close to its figure. */
export function withUnit(value: number, unit: string): string {
  if (unit === "" || unit === "share") return String(value);
  return unit === "°" ? `${value}°` : `${value} ${unit}`;
}
