import { type Obstacle, obstacles } from "@buildproof/prerequisites";
import { excludedBecause, rivalsOf } from "./exclusion";
import { itemByCode } from "./ledger";
import type { ReadBuild } from "./read-build-sheet";
import { remedyOf } from "./remedy";

/** Why an item cannot be chosen beside the others. */
export type ChoiceObstacle = {
  readonly because: string;
  /** Chosen items that would have to go for it; empty where that would not help. */
  readonly goes: readonly { readonly code: string; readonly name: string }[];
};

/**
 * Asks, for one item after another, what stands in its way. Items that it takes the place of are taken as leaving;
 * what is put right otherwise than by items (the fuel recorded, an inspection) stands in nobody's way.
 */
export function choiceObstacles(sheet: ReadBuild): (code: string) => ChoiceObstacle | null {
  const { catalogue, chosen, checked } = sheet;
  const codes = chosen.map(({ code }) => code);
  const otherwise = catalogue.rules.filter((rule) => remedyOf(rule)).map(({ code }) => code);
  const known = new Map<string, ReadonlyMap<string, Obstacle>>();
  const obstaclesBeside = (rivals: readonly string[]) => {
    const key = rivals.join(" ");
    const { model, facts, barred } = checked;
    const beside = codes.filter((each) => !rivals.includes(each));
    const found =
      known.get(key) ??
      new Map(
        obstacles({ model, chosen: beside, barred, facts, otherwise }).map((each) => [each.item, each]),
      );
    known.set(key, found);
    return found;
  };
  return (code) => {
    const rivals = rivalsOf(catalogue, code).filter((each) => codes.includes(each));
    const excluded = excludedBecause(sheet, code);
    const obstacle = obstaclesBeside(rivals).get(code);
    if (obstacle) return inWords(sheet, obstacle, excluded);
    if (excluded === null) return null;
    const goes = codes.find((each) => excludedBecause(sheet, code, [each]) === null);
    return { because: excluded, goes: goes === undefined ? [] : [named(sheet, goes)] };
  };
}

function inWords(sheet: ReadBuild, obstacle: Obstacle, excluded: string | null): ChoiceObstacle {
  const { catalogue } = sheet;
  const rules = obstacle.rules.flatMap(
    (id) => catalogue.rules.find(({ code }) => code === id)?.because ?? [],
  );
  const groups = obstacle.groups.flatMap(
    (id) => catalogue.groups.find(({ code }) => code === id)?.name ?? [],
  );
  const barred = obstacle.barred
    .filter((code) => code !== obstacle.item)
    .map((code) => `${itemByCode(catalogue, code).name} is not to be had for this vehicle.`);
  const reasons = [
    ...rules,
    ...barred,
    ...groups.map((name) => `${name}: only one has its place on the vehicle.`),
  ];
  return {
    because: reasons.length > 0 ? reasons.join(" ") : (excluded ?? "The rules of the catalogue forbid it."),
    goes: obstacle.replaces.map((code) => named(sheet, code)),
  };
}

function named({ catalogue }: ReadBuild, code: string): { readonly code: string; readonly name: string } {
  return { code, name: itemByCode(catalogue, code).name };
}
