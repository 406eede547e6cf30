import type { BuildForecast } from "../../engineering/build-forecast";

/** How a promised power stands to what the forecast says of the same items. */
export type PromiseStanding = {
  /** none: no power is promised. unknown: there is no forecast to hold it against. */
  readonly stands: "kept" | "none" | "not-kept" | "unknown";
  readonly sentence: string;
};

type PromisedPower = { readonly lowKw: number; readonly highKw: number };

/** A promise stands where its low end is no more than what the forecast expects, and the two bands meet. */
export function promiseStanding(promise: PromisedPower | null, forecast: BuildForecast): PromiseStanding {
  if (!promise)
    return forecast.kind === "forecast"
      ? { stands: "none", sentence: `No power is promised; the forecast is ${band(forecast)}.` }
      : { stands: "none", sentence: "No power is promised." };
  const promised = `${promise.lowKw} to ${promise.highKw} kW is promised`;
  if (forecast.kind === "missing")
    return { stands: "unknown", sentence: `${promised}, but ${forecast.sentence}` };
  if (forecast.kind === "unchanged")
    return { stands: "not-kept", sentence: `${promised}, but no item of it changes the engine's power.` };
  const { power } = forecast;
  const meets = promise.lowKw <= power.high && promise.highKw >= power.low;
  if (meets && promise.lowKw <= power.expected)
    return { stands: "kept", sentence: `${promised}, and the forecast is ${band(forecast)}.` };
  return {
    stands: "not-kept",
    sentence: `${promised}, but the forecast is ${band(forecast)}: promise what it supports.`,
  };
}

function band({ power }: Extract<BuildForecast, { readonly kind: "forecast" }>): string {
  return `${Math.round(power.low)} to ${Math.round(power.high)} kW at the hubs, ${Math.round(power.expected)} expected`;
}
