import { tyreFitness } from "@buildproof/engineering";
import { type ChassisFinding, kilograms } from "./finding";
import type { TyreDuty, TyreLine } from "./tyre-line";

const ASK = "Confirm with the local authority or a licensed signatory.";

/** Load and speed of the fitted tyres against axles, top speed, placard and the standard tyre. */
export function tyreFindings(
  standard: TyreLine,
  fitted: TyreLine,
  duty: TyreDuty,
  placardKmh: number | null,
): readonly ChassisFinding[] {
  if (fitted.loadKg === null || fitted.speedKmh === null)
    return [
      {
        id: "tyre-silent",
        grade: "stop",
        sentence: `${fitted.designation} does not say what the tyre carries and how fast it may go: read load index and speed symbol off the sidewall, as in 285/65R18 116T.`,
      },
    ];
  return [
    axleFinding("front", fitted, duty.frontRatingKg, duty.topSpeedKmh),
    axleFinding("rear", fitted, duty.rearRatingKg, duty.topSpeedKmh),
    ...placardLoad(standard, fitted),
    speedFinding(fitted, duty, placardKmh),
  ];
}

function axleFinding(
  axle: "front" | "rear",
  { designation }: TyreLine,
  ratingKg: number,
  topSpeedKmh: number,
): ChassisFinding {
  const { carries, axleCapacityKg } = tyreFitness(designation, ratingKg, topSpeedKmh);
  const told = `Two tyres carry ${kilograms(axleCapacityKg)}; the ${axle} axle is rated ${kilograms(ratingKg)}`;
  return {
    id: `tyre-${axle}`,
    grade: carries ? "fit" : "stop",
    sentence: carries
      ? `${told}.`
      : `${told}: choose tyres that carry at least ${kilograms(Math.ceil(ratingKg / 2))} each.`,
  };
}

/** A placard's load is never gone below; light-truck sidewalls may state less than their index. */
function placardLoad(standard: TyreLine, fitted: TyreLine): readonly ChassisFinding[] {
  if (fitted.designation === standard.designation || fitted.loadKg === null) return [];
  if (standard.loadKg !== null && fitted.loadKg < standard.loadKg)
    return [
      {
        id: "tyre-placard",
        grade: "stop",
        sentence: `Each carries ${kilograms(fitted.loadKg)}, less than the ${kilograms(standard.loadKg)} of the standard tyre: choose load index ${standard.loadIndex} or higher. ${ASK}`,
      },
    ];
  return [
    {
      id: "tyre-placard",
      grade: "fit",
      sentence: `Each carries ${kilograms(fitted.loadKg)}, not less than the standard tyre. Read the sidewall: where it states less than the index, the smaller figure counts.`,
    },
  ];
}

function speedFinding(
  fitted: TyreLine,
  { topSpeedKmh }: TyreDuty,
  placardKmh: number | null,
): ChassisFinding {
  const symbolKmh = fitted.speedKmh ?? 0;
  const told = `Speed symbol ${fitted.speedSymbol} is good for ${symbolKmh} km/h; the vehicle reaches ${topSpeedKmh} km/h`;
  if (symbolKmh >= topSpeedKmh) return { id: "tyre-speed", grade: "fit", sentence: `${told}.` };
  if (placardKmh !== null && placardKmh <= symbolKmh)
    return {
      id: "tyre-speed",
      grade: "watch",
      sentence: `${told}. The placard holds the driver to ${placardKmh} km/h; whether that is enough is for the local code. ${ASK}`,
    };
  return {
    id: "tyre-speed",
    grade: "stop",
    sentence: `${told}: choose a tyre of a higher symbol, or, where the local code allows a lower one, a placard of at most ${symbolKmh} km/h. ${ASK}`,
  };
}
