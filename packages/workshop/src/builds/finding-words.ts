import type { CapacityUse, Condition, Finding } from "@buildproof/prerequisites";
import type { Catalogue, CatalogueRule } from "./catalogue-rows";
import { factWords } from "./fact-words";
import { linkName } from "./systems";

/** What is known when a finding is put into words. */
export type Situation = {
  readonly catalogue: Catalogue;
  readonly chosen: ReadonlySet<string>;
  readonly facts: Readonly<Record<string, number | string>>;
};

/** The finding in one line; why and its source stand beside it. */
export function findingHeadline(
  finding: Finding,
  rule: CatalogueRule | undefined,
  use: CapacityUse | undefined,
  situation: Situation,
): string {
  if (rule?.kind === "capacity" && use) return capacityHeadline(rule.link, rule.unit, use);
  if (rule?.kind === "needs") return `Missing: ${unmetWords(rule.then, situation)}`;
  const names = finding.items.map((code) => nameOf(code, situation));
  if (finding.kind === "group") {
    const group = situation.catalogue.groups.find(({ code }) => code === finding.rule);
    return names.length > 1
      ? `${group?.name ?? "These"}: only one of ${listed(names, "and")} can be fitted`
      : `${group?.name ?? "This"}: one must be chosen`;
  }
  const against = rule?.kind === "excludes" ? chosenIn(rule.then, situation) : [];
  const both = [...new Set([...names, ...against.map((code) => nameOf(code, situation))])];
  return both.length > 1
    ? `${listed(both, "and")} cannot go together`
    : `${both[0] ?? "This"} cannot be fitted`;
}

/** "High-pressure fuel pump: short by 9 % (asked 146 of 133 kg/h)". */
export function capacityHeadline(link: string, unit: string, use: CapacityUse): string {
  const figures = `asked ${figure(use.demand)} of ${figure(use.supply)} ${unit}`;
  if (use.shortBy !== null) return `${linkName(link)}: short by ${percent(use.shortBy)} (${figures})`;
  if (use.asked === null && use.demand > 0) return `${linkName(link)}: nothing supplied (${figures})`;
  if (use.headroom === null) return `${linkName(link)}: nothing asked`;
  const headroom = `${percent(use.headroom)} headroom`;
  return use.met
    ? `${linkName(link)}: ${headroom} (${figures})`
    : `${linkName(link)}: ${headroom}, below the ${figure(use.reservePct)} % kept in reserve (${figures})`;
}

/** The items named in a condition that are chosen. */
export function chosenIn(condition: Condition, { chosen }: Situation): readonly string[] {
  return namedItems(condition).filter((code) => chosen.has(code));
}

export function namedItems(condition: Condition | null): readonly string[] {
  if (!condition) return [];
  if ("item" in condition) return [condition.item];
  if ("all" in condition) return condition.all.flatMap(namedItems);
  if ("any" in condition) return condition.any.flatMap(namedItems);
  if ("not" in condition) return namedItems(condition.not);
  return [];
}

export function namedFacts(condition: Condition | null): readonly string[] {
  if (!condition) return [];
  if ("fact" in condition) return [condition.fact];
  if ("all" in condition) return condition.all.flatMap(namedFacts);
  if ("any" in condition) return condition.any.flatMap(namedFacts);
  if ("not" in condition) return namedFacts(condition.not);
  return [];
}

export function nameOf(code: string, { catalogue }: Situation): string {
  return catalogue.items.find((item) => item.code === code)?.name ?? code;
}

/** What would have to be so, without what is so already. */
function unmetWords(condition: Condition, situation: Situation): string {
  if ("item" in condition) return nameOf(condition.item, situation);
  if ("fact" in condition) return factWords(condition.fact, Number(condition.atLeast));
  if ("all" in condition)
    return listed(
      condition.all.filter((part) => !holds(part, situation)).map((part) => unmetWords(part, situation)),
      "and",
    );
  if ("any" in condition)
    return listed(
      condition.any.map((part) => unmetWords(part, situation)),
      "or",
    );
  return `without ${namedItems(condition.not)
    .map((code) => nameOf(code, situation))
    .join(", ")}`;
}

function holds(condition: Condition, situation: Situation): boolean {
  if ("item" in condition) return situation.chosen.has(condition.item);
  if ("fact" in condition) return Number(situation.facts[condition.fact] ?? 0) >= Number(condition.atLeast);
  if ("all" in condition) return condition.all.every((part) => holds(part, situation));
  if ("any" in condition) return condition.any.some((part) => holds(part, situation));
  return !holds(condition.not, situation);
}

function listed(words: readonly string[], joiner: "and" | "or"): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} ${joiner} ${words.at(-1)}`;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function figure(value: number): string {
  return new Intl.NumberFormat("en-AU", { maximumFractionDigits: 1 }).format(value);
}
