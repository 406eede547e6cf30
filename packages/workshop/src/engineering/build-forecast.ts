import { type Forecast, type ForecastQuestion, powerForecast } from "@buildproof/engineering";
import { ImpossibleInputError } from "@buildproof/units";
import { asItStands } from "./as-it-stands";
import { type Curve, type CurvePeak, forecastCurve } from "./forecast-curve";
import { forecastQuestionOf, referenceAir } from "./forecast-question-of";
import { type ForecastFuel, fuelOfForecast } from "./fuel-of-forecast";
import { type LimitRange, limitRanges, rpm } from "./limit-ranges";
import { type MeasuredBaseline, type PowerBaseline, powerBaseline } from "./power-baseline";
import { type ChosenFigures, type FuelBought, type PowerChange, powerChange } from "./power-change";
import type { ModelFigures, StoredCap } from "./stored-figures";
import { pressureShareAt } from "./thin-air";
import {
  type GivenFigures,
  splitAssumptions,
  type UsedAssumptions,
  usedAssumptions,
} from "./used-assumptions";

/** Torque at the crank that a controller holds in some gears; they count from 1. */
export type GearCap = { readonly torqueNm: number; readonly gears: readonly number[] };

/** A build as its forecast sees it. */
export type ForecastBuild = {
  readonly model: ModelFigures;
  readonly chosen: readonly ChosenFigures[];
  readonly bought: FuelBought;
  readonly measured: MeasuredBaseline | null;
  readonly designAmbientC: number;
  readonly altitudeM: number;
  /** Assumptions that were changed on this build. */
  readonly given: GivenFigures;
};

type Told = { readonly baseline: Pick<PowerBaseline, "source" | "sentence" | "sessionId"> };

/** Either the forecast, always with its band and assumptions, or one sentence that says why there is none. */
export type BuildForecast =
  | (Told & { readonly kind: "unchanged"; readonly asItStands: CurvePeak; readonly sentence: string })
  | { readonly kind: "missing"; readonly sentence: string }
  | Forecasted;

export type Forecasted = Told &
  Curve & {
    readonly kind: "forecast";
    readonly change: Forecast["kind"];
    /** In what air and on what fuel the figures are told. */
    readonly reference: string;
    readonly hotDay: Curve & { readonly tempC: number };
    readonly boost: { readonly kPa: number; readonly speedRpm: number } | null;
    readonly hottestChargeC: number | null;
    readonly limits: readonly LimitRange[];
    /** What is held in other gears than the dyno's. */
    readonly gears: readonly string[];
    readonly gearCaps: readonly GearCap[];
    /** At the crank, if nothing held it: what gearbox and clutch would have to bear. */
    readonly askedOfGearbox: { readonly torqueNm: number; readonly speedRpm: number };
    readonly fuel: ForecastFuel;
    readonly assumptions: UsedAssumptions;
  };

/** What the build will make, assembled from its vehicle, its items and its assumptions. */
export function buildForecast(build: ForecastBuild): BuildForecast {
  const { change, baseline, question, assumptions } = askedOf(build);
  const { source, sentence, sessionId } = baseline;
  const told: Told = { baseline: { source, sentence, sessionId } };
  if (isBlownDiesel(change)) return missing("a blower is forecast for spark ignition only");
  if (!question) {
    return {
      ...told,
      kind: "unchanged",
      asItStands: asItStands(baseline, assumptions),
      sentence: "No chosen item changes the engine's power.",
    };
  }
  try {
    return { ...told, ...forecasted(question, change, build.given) };
  } catch (error) {
    if (error instanceof ImpossibleInputError) return missing(error.message);
    throw error;
  }
}

type AskedOfGearbox = Forecasted["askedOfGearbox"];

/** What of it gearbox and clutch would have to bear, alone and much sooner; null where nothing is forecast. */
export function buildAsksOfGearbox(build: ForecastBuild): AskedOfGearbox | null {
  const { change, question } = askedOf(build);
  if (isBlownDiesel(change) || !question) return null;
  try {
    return askedOfGearbox(unheld(question));
  } catch (error) {
    if (error instanceof ImpossibleInputError) return null;
    throw error;
  }
}

function askedOf({ model, chosen, bought, measured, designAmbientC, altitudeM, given }: ForecastBuild) {
  const change = powerChange(model, chosen, bought);
  const baseline = powerBaseline(model, measured);
  const assumptions = { ...change.assume, ...splitAssumptions(given).engine };
  const question = forecastQuestionOf(model, change, baseline, {
    hotDay: { tempC: designAmbientC, pressureKPa: referenceAir.pressureKPa * pressureShareAt(altitudeM) },
    assumptions,
  });
  return { change, baseline, assumptions, question };
}

function isBlownDiesel({ blower, fuel }: PowerChange): boolean {
  return blower !== null && fuel === "diesel";
}

/** As if neither a controller nor the fuel held it. */
function unheld(question: ForecastQuestion): Forecast {
  return powerForecast({ ...question, torqueCaps: [], fuelSupply: null, hotDay: null });
}

function askedOfGearbox({ points }: Forecast): AskedOfGearbox {
  const most = points.reduce((best, each) => (each.crankTorqueNm > best.crankTorqueNm ? each : best));
  return { torqueNm: most.crankTorqueNm, speedRpm: most.speedRpm };
}

/** The one sentence of what cannot be forecast. */
export function missing(because: string): Extract<BuildForecast, { kind: "missing" }> {
  return { kind: "missing", sentence: `No forecast: ${because.replace(/\.$/, "")}.` };
}

function forecasted(
  question: ForecastQuestion,
  change: PowerChange,
  given: GivenFigures,
): Omit<Forecasted, keyof Told> {
  const forecast = powerForecast(question);
  const free = unheld(question);
  const assumptions = usedAssumptions({ question, change, given, engine: forecast.assumptions });
  const { hotDay } = forecast;
  if (!hotDay) throw new RangeError("A hot day was asked.");
  return {
    kind: "forecast",
    change: forecast.kind,
    reference: referenceOf(question, forecast),
    ...forecastCurve(forecast),
    hotDay: { ...forecastCurve(hotDay), tempC: question.hotDay?.tempC ?? 0 },
    ...boostOf(forecast),
    limits: limitRanges(forecast.points),
    gears: gearSentences(change, free),
    gearCaps: gearCapsOf(change.caps),
    askedOfGearbox: askedOfGearbox(free),
    fuel: fuelOfForecast(question, free, { ...forecast.assumptions, ...splitAssumptions(given).own }),
    assumptions,
  };
}

function referenceOf({ fuel }: ForecastQuestion, { assumptions }: Forecast): string {
  const what = fuel === "petrol" ? `petrol ${assumptions.octaneNumber}` : fuel;
  return `${what}, 25 °C, sea level, gear nearest 1:1`;
}

function boostOf({ points }: Forecast): Pick<Forecasted, "boost" | "hottestChargeC"> {
  const blown = points.flatMap(({ boostKPa, speedRpm }) =>
    boostKPa === null ? [] : [{ kPa: boostKPa, speedRpm }],
  );
  const charges = points.flatMap(({ manifoldTempC }) => manifoldTempC ?? []);
  return {
    boost: blown.length > 0 ? blown.reduce((most, each) => (each.kPa > most.kPa ? each : most)) : null,
    hottestChargeC: charges.length > 0 ? Math.max(...charges) : null,
  };
}

export function gearCapsOf(caps: readonly StoredCap[]): readonly GearCap[] {
  return caps.flatMap(({ torqueNm, gears }) => (gears ? [{ torqueNm, gears }] : []));
}

function gearSentences({ caps }: PowerChange, { points }: Forecast): readonly string[] {
  return caps.flatMap(({ name, torqueNm, gears }) => {
    if (!gears) return [];
    const held = points.filter(({ crankTorqueNm }) => crankTorqueNm > torqueNm);
    const [first, last] = [held.at(0), held.at(-1)];
    const where = `In gears ${gears.join(", ").replace(/, (\d+)$/, " and $1")} ${name.charAt(0).toLowerCase()}${name.slice(1)}`;
    if (!first || !last)
      return [`${where} would hold ${torqueNm} N·m at the crank; this build stays under it.`];
    return [
      `${where} holds ${torqueNm} N·m at the crank, from ${rpm(first.speedRpm)} to ${rpm(last.speedRpm)}.`,
    ];
  });
}
