import type { AxleLoad } from "@buildproof/engineering";
import { type ChassisFinding, kilograms } from "./finding";
import type { MassSheet } from "./mass-sheet";

type Limit = {
  readonly id: string;
  readonly name: string;
  /** "of the gross mass, 3,350 kg", after what is left. */
  readonly of: string;
  readonly leftKg: number;
  readonly remedy: string;
};

/** Which limit is met first, in words, and every one that is passed with what to do. */
export function massFindings(sheet: MassSheet): readonly ChassisFinding[] {
  const { front, rear } = sheet.travelling;
  const limits: readonly Limit[] = [
    {
      id: "gross-mass",
      name: `gross vehicle mass of ${kilograms(sheet.gvmKg)}`,
      of: `of the gross vehicle mass, ${kilograms(sheet.gvmKg)}`,
      leftKg: sheet.gvmLeftKg,
      remedy: "carry less, put less on the ball, or look at a gross-mass upgrade",
    },
    axleLimit("front-axle", "front axle", front, "take something off the nose, or look at stronger springs"),
    axleLimit("rear-axle", "rear axle", rear, "load further forward, or put less on the ball"),
  ];
  const over = limits.filter(({ leftKg }) => leftKg < 0);
  const [first] = [...limits].sort((one, other) => one.leftKg - other.leftKg);
  if (over.length === 0 && first)
    return [
      {
        id: "binding",
        grade: "fit",
        sentence: `With every seat taken it is within its limits. The least is left ${first.of}: ${kilograms(first.leftKg)}.`,
      },
    ];
  return over.map(({ id, name, leftKg, remedy }) => ({
    id,
    grade: "stop",
    sentence: `Over the ${name} by ${kilograms(-leftKg)} with every seat taken: ${remedy}.`,
  }));
}

function axleLimit(id: string, axle: string, load: AxleLoad, remedy: string): Limit {
  const { ratingKg, tyreCapacityKg, leftKg } = load;
  return tyreCapacityKg !== null && tyreCapacityKg < ratingKg
    ? {
        id,
        name: `${kilograms(tyreCapacityKg)} that the two tyres of the ${axle} carry`,
        of: `on the tyres of the ${axle}, ${kilograms(tyreCapacityKg)}`,
        leftKg,
        remedy: "choose tyres of a higher load index",
      }
    : {
        id,
        name: `rating of the ${axle}, ${kilograms(ratingKg)},`,
        of: `on the ${axle}, rated ${kilograms(ratingKg)}`,
        leftKg,
        remedy,
      };
}
