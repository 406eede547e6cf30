import { fuelStageWords } from "../fuel/explain-fuel-shortfall";
import type { FuelStageKind } from "../fuel/fuel-stage";
import type { ForecastLimit } from "./forecast-question";

/** One sentence that says what holds the power at a speed; the stage is the fuel system's, the name the cap's. */
export function explainForecastLimit(
  limit: ForecastLimit,
  { stage, cap }: { readonly stage?: FuelStageKind | undefined; readonly cap?: string | undefined } = {},
): string {
  switch (limit) {
    case "air":
      return "The blower moves no more air at this speed.";
    case "fuel":
      return `The ${stage ? fuelStageWords(stage) : "fuel system"} passes no more fuel: air is held back to keep the mixture.`;
    case "torque-cap":
      return `${cap ?? "A torque limit"} holds the torque at the crank.`;
    case "blower-speed":
      return "Blower or belt run faster than their makers allow: do not run it so; change the pulleys.";
    case "charge-temperature":
      return "The charge is hotter than the stop limit: the controller will take power; improve the cooling.";
    case "knock":
      return "Knock holds the spark further back than is sensible: use better fuel or less boost.";
    case "torque-request":
      return "The calibration asks for no more torque.";
    case "smoke":
      return "More fuel would smoke.";
    case "exhaust-temperature":
      return "More fuel would take the exhaust over its temperature limit.";
  }
}
