import type { WrittenDecimal } from "@buildproof/units";
import type { Clash } from "../complete/clash";
import type {
  BuildCount,
  Chooser,
  ExampleBuild,
  LimitProof,
  ProofFinding,
  UnsettledQuestion,
} from "./catalogue-proof";

/** What the workshop calls things. */
export type ProofWords = {
  readonly item: (id: string) => string;
  readonly package: (id: string) => string;
  /** What a rule or group says, as a sentence. */
  readonly rule: (id: string) => string;
  /** What a vehicle has whose fact is the value, at least it, or less than it, as in "vehicles with …". */
  readonly fact: (name: string, value: WrittenDecimal, how: "is" | "at-least" | "below") => string;
  readonly limit: (id: string) => { readonly name: string; readonly unit: string };
};

/** A finding as one sentence, its reasons after it. */
export function findingSentence(finding: ProofFinding, words: ProofWords): string {
  switch (finding.kind) {
    case "nothing-buildable":
      return `Nothing at all can be built.${reasons(finding.clash, words)}`;
    case "item-never":
      return `${words.item(finding.item)} can never be chosen.${reasons(finding.clash, words)}`;
    case "package-never":
      return packageNever(finding, words);
    case "option-never":
      return `${words.package(finding.package)} offers ${words.item(finding.item)}, which can never be taken with it.${finding.clash ? reasons(finding.clash, words) : ""}`;
    case "rule-contradicted":
      return `No build can keep this rule when it applies: “${words.rule(finding.rule)}”${reasons(finding.clash, words)}`;
    case "rule-never-applies":
      return `This rule never applies: “${words.rule(finding.rule)}”`;
    case "rule-always-kept":
      return alwaysKept(finding, words);
    case "forces":
      if (finding.by && "package" in finding.by)
        return `${words.package(finding.by.package)} lacks ${list(finding.items.map(words.item))}: no build with it goes without.`;
      return `Every build${having(finding.by, words)} has ${list(finding.items.map(words.item))}.`;
    case "only-at-least":
      return `Every build${having(finding.by, words)} is only for vehicles with ${words.fact(finding.fact, finding.value, "at-least")}.`;
    case "only-below":
      return `Every build${having(finding.by, words)} is only for vehicles with ${words.fact(finding.fact, finding.value, "below")}.`;
    case "unsettled":
      return unsettled(finding.question, words);
  }
}

/** The guarantee of one limit as a sentence, with what to do where there is none. */
export function limitSentence({ limit, verdict, example }: LimitProof, words: ProofWords): string {
  const { name, unit } = words.limit(limit);
  if (verdict === "unsettled" || (verdict !== "kept-by-others" && !example)) {
    return `Whether a build can exceed the limit “${name}” could not be settled in time: prove it again with more time.`;
  }
  if (!example) return `No build that the other rules let through exceeds the limit “${name}”.`;
  const use = `${number(example.asked)} ${unit} asked of ${number(example.supplied)} ${unit}`;
  const build = `${list(example.items.map(words.item))}${on(example, words)}: ${use}.`;
  if (verdict === "kept-by-itself")
    return `Only its own rule keeps the limit “${name}”. It stops builds like ${build}`;
  return verdict === "set-aside"
    ? `The limit “${name}” is exceeded when somebody sets its rule aside, as by ${build} Make it a safety rule if nobody may.`
    : `No rule keeps the limit “${name}”, and builds that can be sold exceed it, as ${build} Add a rule for this vehicle.`;
}

/** How many builds there are: "7,658,863", "at least 1,024", "none". */
export function countText({ isExact, builds }: Pick<BuildCount, "isExact" | "builds">): string {
  if (isExact && builds === 0n) return "none";
  return `${isExact ? "" : "at least "}${builds.toLocaleString("en-AU")}`;
}

function packageNever(
  { package: id, notFitting, clash }: Extract<ProofFinding, { kind: "package-never" }>,
  words: ProofWords,
): string {
  const name = words.package(id);
  if (notFitting.length === 0) return `${name} can never be built.${reasons(clash, words)}`;
  const verb = notFitting.length === 1 ? "does" : "do";
  return `${name} can never be built: ${list(notFitting.map(words.item))} ${verb} not fit.`;
}

function alwaysKept(
  { rule, by }: Extract<ProofFinding, { kind: "rule-always-kept" }>,
  words: ProofWords,
): string {
  const said = `“${words.rule(rule)}”`;
  if (by === null) return `The other rules keep this one already: ${said}`;
  if (by.length === 0) return `Nothing can break this rule: ${said}`;
  return `This rule is kept already by ${by.length === 1 ? "another" : "others"}: ${said} See ${quoted(by, words)}`;
}

function unsettled(question: UnsettledQuestion, words: ProofWords): string {
  const late = "could not be settled in time: prove it again with more time.";
  switch (question.about) {
    case "buildable":
      return `Whether anything can be built ${late}`;
    case "item":
      return `Whether ${words.item(question.id)} can be chosen ${late}`;
    case "package":
      return `Whether ${words.package(question.id)} can be built ${late}`;
    case "option":
      return `Whether ${words.package(question.id)} can be built with ${words.item(question.item)} ${late}`;
    case "rule":
      return `Whether this rule does anything ${late} “${words.rule(question.id)}”`;
    case "forces":
      return `What every build${having(question.by, words)} has ${late}`;
  }
}

function reasons(clash: Clash | null, words: ProofWords): string {
  if (!clash) return " The reasons were not narrowed down in time.";
  const rules = [...clash.groups, ...clash.rules];
  if (rules.length === 0) return "";
  return rules.length === 1
    ? ` This speaks against it: ${quoted(rules, words)}`
    : ` These leave no way together: ${quoted(rules, words)}`;
}

function having(by: Chooser, words: ProofWords): string {
  if (by === null) return "";
  return ` with ${"item" in by ? words.item(by.item) : words.package(by.package)}`;
}

function on({ facts }: ExampleBuild, words: ProofWords): string {
  const said = Object.entries(facts).map(([fact, value]) => words.fact(fact, value, "is"));
  return said.length > 0 ? ` on a vehicle with ${list(said)}` : "";
}

function quoted(ids: readonly string[], words: ProofWords): string {
  return ids.map((id) => `“${words.rule(id)}”`).join(" ");
}

/** Names that have commas of their own are kept apart by semicolons. */
function list(names: readonly string[]): string {
  if (names.length === 0) return "nothing";
  const [last, rest] = [names.at(-1) ?? "", names.slice(0, -1)];
  if (rest.length === 0) return last;
  const apart = names.some((name) => name.includes(",")) ? "; " : ", ";
  return `${rest.join(apart)}${apart === "; " ? ";" : ""} and ${last}`;
}

function number(value: number): string {
  return value.toLocaleString("en-AU");
}
