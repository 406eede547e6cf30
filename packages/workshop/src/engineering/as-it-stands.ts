import { deliveredPower, forecastAssumptions } from "@buildproof/engineering";
import type { Banded, CurvePeak } from "./forecast-curve";
import type { PowerBaseline } from "./power-baseline";
import type { Assumed } from "./power-change";

/**
 * What the vehicle makes at the hubs as it stands, with its band: a rating less the driveline, or its own run.
 *
 * @source  Root of the sum of squares of independent deviations (propagation of uncertainty, GUM, first order); the
 *          usual figures are common practice, no source.
 */
export function asItStands(baseline: PowerBaseline, assume: Assumed): CurvePeak {
  const { points } = baseline;
  const [first, ...rest] = points.map((point) => ({
    ...atHubs(baseline, assume, point),
    speedRpm: point.speedRpm,
  }));
  if (!first) throw new RangeError("A baseline has points.");
  return rest.reduce((most, each) => (each.expected > most.expected ? each : most), first);
}

/** Its power at the hubs at one speed, with its band. */
export function atHubs(
  { at }: PowerBaseline,
  assume: Assumed,
  { speedRpm, powerKw }: PowerBaseline["points"][number],
): Banded {
  const usual = (name: "meshEfficiency" | "dragKwAt6000" | "meshBand" | "dragBandKw" | "ratedBandShare") =>
    assume[name] ?? forecastAssumptions[name][0];
  if (at === "hubs") {
    const share = assume.measuredBandShare ?? forecastAssumptions.measuredBandShare[0];
    return { low: powerKw * (1 - share), expected: powerKw, high: powerKw * (1 + share) };
  }
  const hubs = (rated: number, mesh: number, dragKw: number) =>
    deliveredPower(powerKw * (1 + rated), speedRpm, "hubs", {
      meshEfficiency: usual("meshEfficiency") + mesh,
      dragKwAt6000: usual("dragKwAt6000") + dragKw,
      tyreEfficiency: 1,
    });
  const expected = hubs(0, 0, 0);
  const apart = Math.hypot(
    hubs(usual("ratedBandShare"), 0, 0) - expected,
    hubs(0, usual("meshBand"), 0) - expected,
    hubs(0, 0, usual("dragBandKw")) - expected,
  );
  return { low: Math.max(0, expected - apart), expected, high: expected + apart };
}
