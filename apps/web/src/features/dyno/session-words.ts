import type { DynoKind, SessionView } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";
import { momentText } from "@/design/moment-text";
import { LEAST_BOOST_KPA } from "./overlay-runs";

export const kindWords: Readonly<Record<DynoKind, string>> = {
  baseline: "Baseline",
  step: "Step",
  proof: "Proof",
};

/** "Proof, Wed 25 Nov, 14:20" */
export function sessionTitle(
  { kind, doneAt }: Pick<SessionView, "kind" | "doneAt">,
  timeZone: string,
): string {
  return `${kindWords[kind]}, ${momentText(doneAt, timeZone)}`;
}

const KILOPASCALS_PER_PSI = 6.894757;

/** "64 kPa (9.3 psi)" */
function boostText(boostKPa: number): string {
  return `${figureText(boostKPa)} kPa (${figureText(boostKPa / KILOPASCALS_PER_PSI, 1)} psi)`;
}

/** How the correction came about, as the certificate has to say it. */
export function correctionText(session: SessionView): string {
  const { code, factor, barometerKPa, airTempC, relativeHumidityPct, dryPressureKPa } = session;
  const air = `${figureText(barometerKPa, 1)} kPa, ${figureText(airTempC, 1)} °C at the inlet, ${figureText(relativeHumidityPct)} % humidity, dry air ${figureText(dryPressureKPa, 2)} kPa`;
  return `${code}, factor ${factor.toFixed(4)}${session.factorValid ? "" : ", outside what the code allows"}: ${air}.`;
}

export function conditionsText(session: SessionView): string {
  const { gear, gearRatio, finalDrive, gearboxOilTempC, rampRpmPerS, smoothingRpm, figures } = session;
  const boostKPa = figures.peakBoostKPa ?? 0;
  const parts = [
    `Gear ${gear}${gearRatio === null ? "" : ` (${gearRatio} to 1)`}`,
    ...(finalDrive === null ? [] : [`final drive ${finalDrive} to 1${slipText(session)}`]),
    ...(gearboxOilTempC === null ? [] : [`gearbox oil ${figureText(gearboxOilTempC)} °C`]),
    ...(rampRpmPerS === null ? [] : [`ramp ${figureText(rampRpmPerS)} rpm/s`]),
    ...(boostKPa > LEAST_BOOST_KPA ? [`boost up to ${boostText(boostKPa)}`] : []),
    `smoothed over ${figureText(smoothingRpm)} rpm`,
  ];
  return `${parts.join("; ")}.`;
}

/** How well engine and hubs kept to the two, over the runs that count. */
function slipText({ runs }: SessionView): string {
  const counted = runs.filter(({ excludedBecause }) => excludedBecause === null);
  const slips = counted.flatMap(({ slipPct }) => (slipPct === null ? [] : Math.abs(slipPct)));
  return slips.length === 0 ? "" : `, engine and hubs within ${figureText(Math.max(...slips), 1)} % of it`;
}

export function spreadText({ figures }: SessionView): string {
  const { runs, spreadPct, spreadLimitPct, enoughRuns, isRepeatable } = figures;
  if (runs === 0) return "No run counts.";
  if (runs === 1) return "One run counts; nothing can be said of their spread.";
  const within = spreadPct <= spreadLimitPct ? "within" : "beyond";
  const few = enoughRuns ? "" : " Three runs are needed.";
  const agree = enoughRuns && !isRepeatable ? " They do not agree: find out why and run again." : "";
  return `${runs} runs count; they spread by ${figureText(spreadPct, 1)} %, ${within} the ${figureText(spreadLimitPct)} % allowed.${few}${agree}`;
}
