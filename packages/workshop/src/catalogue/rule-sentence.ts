import type { Condition } from "@buildproof/prerequisites";
import { factWords, lackingFactWords } from "../builds/fact-words";
import { linkName } from "../builds/systems";
import { amountWords } from "./amount-words";
import type { CatalogueNames } from "./catalogue-names";
import { listed } from "./listed";
import type { ContentOf } from "./part-content";

type Names = Pick<CatalogueNames, "item">;

/** More items than this are counted, not named. */
const MOST_NAMED = 5;

/** A rule as one sentence that a person of the trade can agree or disagree with. */
export function ruleSentence(rule: ContentOf<"rule">, names: Names): string {
  if (rule.kind === "capacity") return capacitySentence(rule, names);
  const verb = rule.kind === "needs" ? "needs" : "cannot have";
  const what = conditionWords(rule.then, names);
  return rule.when
    ? `When the build has ${conditionWords(rule.when, names)}, it ${verb} ${what}.`
    : `Every build ${verb} ${what}.`;
}

/** A condition in words, as what a build has. */
export function conditionWords(condition: Condition, names: Names): string {
  if ("item" in condition) return `“${names.item(condition.item)}”`;
  if ("fact" in condition) return factWords(condition.fact, Number(condition.atLeast));
  if ("not" in condition) return deniedWords(condition.not, names);
  if ("all" in condition) {
    if (condition.all.length === 0) return "anything at all";
    return listed(
      condition.all.map((part) => nestedWords(part, "all", names)),
      "and",
    );
  }
  if (condition.any.length === 0) return "something that there is not";
  return listed(
    condition.any.map((part) => nestedWords(part, "any", names)),
    "or",
  );
}

/** Inside another list, a list of the other kind is held together by its words. */
function nestedWords(condition: Condition, outer: "all" | "any", names: Names): string {
  const words = conditionWords(condition, names);
  if ("any" in condition && outer === "all" && condition.any.length > 1) return `either ${words}`;
  if ("all" in condition && outer === "any" && condition.all.length > 1) return `both ${words}`;
  return words;
}

function deniedWords(denied: Condition, names: Names): string {
  if ("item" in denied) return `no ${conditionWords(denied, names)}`;
  if ("fact" in denied) return lackingFactWords(denied.fact, Number(denied.atLeast));
  if ("not" in denied) return conditionWords(denied.not, names);
  if ("any" in denied)
    return listed(
      denied.any.map((part) => deniedWords(part, names)),
      "and",
    );
  return `not all of ${conditionWords(denied, names)}`;
}

type Capacity = Extract<ContentOf<"rule">, { readonly kind: "capacity" }>;

function capacitySentence(rule: Capacity, names: Names): string {
  const { link, quantity, unit, supply, demand, reservePct } = rule;
  const asked = amounts(demand, unit, names);
  const given = amounts(supply, unit, names);
  const reserve = reservePct > 0 ? `, with ${amountWords(reservePct, "%")} kept in reserve` : "";
  return [
    `${linkName(link)}, ${quantity}: what is asked`,
    asked ? ` (${asked})` : "",
    " is never more than what the vehicle gives",
    given ? ` together with ${given}` : "",
    `${reserve}.`,
  ].join("");
}

function amounts(of: Capacity["supply"], unit: string, names: Names): string {
  const known = Object.entries(of);
  const named = known
    .slice(0, known.length > MOST_NAMED ? MOST_NAMED - 1 : MOST_NAMED)
    .map(([code, amount]) => `“${names.item(code)}” ${amountWords(amount, unit)}`);
  const more = known.length - named.length;
  return listed(more > 0 ? [...named, `${more} more`] : named, "and");
}
