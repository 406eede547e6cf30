import { type AbortLimit, limitSentence } from "./abort-limits";
import type { LimitedReading } from "./limit-readings";
import type { SessionFigures } from "./session-figures";

/** One link of the chain as the proof showed it. Shares are what was asked ÷ what there is. */
export type MeasuredLink = {
  readonly link: string;
  readonly name: string;
  readonly forecast: number | null;
  /** Null where nothing limits it. */
  readonly measured: number | null;
  readonly figures: string;
  readonly grade: "fit" | "watch" | "stop";
  /** What is said of it where it is the weakest. */
  readonly sentence: string;
  /** Past it something may break; a promise only disappoints. */
  readonly isLimit: boolean;
};

export type MeasuredProof = {
  readonly figures: Pick<SessionFigures, "peakPower" | "peakTorque" | "peakBoostKPa">;
  readonly readings: readonly LimitedReading[];
};

export type ForecastFigures = {
  readonly powerKw: { readonly low: number; readonly expected: number; readonly high: number };
  readonly boostKPa: number | null;
  readonly chargeC: number | null;
};

type Held = { readonly link: string; readonly name: string; readonly supply: number; readonly unit: string };

/** Where in the chain a channel shows what is asked. */
const linkOfChannel: Partial<
  Record<AbortLimit["channel"], { readonly link: string; readonly name: string }>
> = {
  fuelRailMPa: { link: "high-pressure-pump", name: "High-pressure pump" },
  lambda: { link: "mixture", name: "Mixture" },
  intakeTempC: { link: "cooler", name: "Charge cooler" },
};

/**
 * What a proof showed of the chain, each against its limit: rail pressure, mixture, intake temperature, the torque
 * that gearbox and clutch passed on, boost beside its forecast, and the power against the promise.
 */
export function measuredLinks(
  { figures, readings }: MeasuredProof,
  held: readonly Held[],
  forecast: ForecastFigures | null,
  promise: { readonly lowKw: number; readonly highKw: number } | null,
): readonly MeasuredLink[] {
  return [
    ...readings.flatMap((each) => channelLink(each, forecast)),
    ...held.flatMap((each) => torqueLink(each, figures)),
    ...boostLink(figures, forecast),
    ...promiseLink(figures, forecast, promise),
  ];
}

/** The link that came nearest to its limit or furthest past it; a promise counts only where it was missed. */
export function weakestMeasured(links: readonly MeasuredLink[]): MeasuredLink | null {
  const asked = links.filter(({ measured, isLimit }) => measured !== null && (isLimit || measured > 1));
  const rank = ({ measured, isLimit }: MeasuredLink) =>
    (measured ?? 0) + (isLimit && (measured ?? 0) > 1 ? 100 : 0);
  return asked.toSorted((a, b) => rank(b) - rank(a))[0] ?? null;
}

function channelLink(
  { limit, reading }: LimitedReading,
  forecast: ForecastFigures | null,
): readonly MeasuredLink[] {
  const place = linkOfChannel[limit.channel];
  if (!place || !reading) return [];
  const asked = (value: number) => (limit.side === "most" ? value / limit.stop : limit.stop / value);
  const figure = (value: number) => value.toFixed(limit.decimals);
  const chargeC = limit.channel === "intakeTempC" ? (forecast?.chargeC ?? null) : null;
  const told = chargeC === null ? "" : `; forecast ${figure(chargeC)}`;
  const bound = limit.side === "most" ? "of at most" : "of at least";
  return [
    {
      ...place,
      forecast: chargeC === null ? null : asked(chargeC),
      measured: asked(reading.value),
      figures: `${figure(reading.value)} ${bound} ${figure(limit.stop)} ${limit.unit}${told}`,
      grade: reading.grade,
      sentence: limitSentence(limit, reading),
      isLimit: true,
    },
  ];
}

/** Below this share left, a link that holds is watched. Common practice, no source. */
const WATCHED = 0.9;

function torqueLink({ link, name, supply, unit }: Held, { peakTorque }: MeasuredProof["figures"]) {
  if (!peakTorque || unit !== "N·m" || !(supply > 0)) return [];
  const measured = peakTorque.value / supply;
  const figures = `${peakTorque.value.toFixed(0)} at the hubs of ${supply.toFixed(0)} N·m`;
  const grade = measured > 1 ? "stop" : measured > WATCHED ? "watch" : "fit";
  const sentence = `${name}: ${figures}, and it bears what the driveline takes on top.`;
  return [{ link, name, forecast: null, measured, figures, grade, sentence, isLimit: true } as const];
}

function boostLink({ peakBoostKPa }: MeasuredProof["figures"], forecast: ForecastFigures | null) {
  if (peakBoostKPa === null || !forecast?.boostKPa) return [];
  const figures = `boost ${peakBoostKPa.toFixed(0)} kPa; forecast ${forecast.boostKPa.toFixed(0)}`;
  const none = { forecast: null, measured: null, isLimit: false } as const;
  return [{ ...none, link: "engine", name: "Engine", figures, grade: "fit", sentence: figures } as const];
}

function promiseLink(
  { peakPower }: MeasuredProof["figures"],
  forecast: ForecastFigures | null,
  promise: { readonly lowKw: number; readonly highKw: number } | null,
): readonly MeasuredLink[] {
  if (!peakPower || !promise) return [];
  const { lowKw, highKw } = promise;
  const measured = lowKw / peakPower.value;
  const band =
    forecast && `; forecast ${forecast.powerKw.low.toFixed(0)} to ${forecast.powerKw.high.toFixed(0)}`;
  const figures = `${peakPower.value.toFixed(0)} of ${lowKw.toFixed(0)} to ${highKw.toFixed(0)} kW promised${band ?? ""}`;
  return [
    {
      link: "promise",
      name: "Power at the hubs",
      forecast: forecast && lowKw / forecast.powerKw.expected,
      measured,
      figures,
      grade: measured > 1 ? "watch" : "fit",
      sentence: `Power at the hubs: ${figures}.`,
      isLimit: false,
    },
  ];
}
