/** A condition as it is put together: lines that are items or facts, or lists of lines; each may be denied. */
export type ConditionLine = { readonly id: number; readonly isNot: boolean } & (
  | { readonly kind: "item"; readonly item: string }
  | { readonly kind: "fact"; readonly fact: string; readonly atLeast: string }
  | { readonly kind: "list"; readonly join: "all" | "any"; readonly lines: readonly ConditionLine[] }
);

export type ConditionList = Extract<ConditionLine, { readonly kind: "list" }>;

/** As the catalogue has it, and as the form sends it: there a figure is text. */
export type SentCondition =
  | { readonly item: string }
  | { readonly fact: string; readonly atLeast: string | number }
  | { readonly all: readonly SentCondition[] }
  | { readonly any: readonly SentCondition[] }
  | { readonly not: SentCondition };

let last = 0;
const nextId = () => {
  last += 1;
  return last;
};

export function itemLine(item = ""): ConditionLine {
  return { id: nextId(), isNot: false, kind: "item", item };
}

export function factLine(): ConditionLine {
  return { id: nextId(), isNot: false, kind: "fact", fact: "", atLeast: "" };
}

export function listLine(join: "all" | "any", lines: readonly ConditionLine[] = []): ConditionList {
  return { id: nextId(), isNot: false, kind: "list", join, lines };
}

/** Always a list outside, so that a line can be added; a list within is shown as one. */
export function linesOf(condition: SentCondition | null): ConditionList {
  if (!condition) return listLine("all");
  const line = lineOf(condition);
  return line.kind === "list" && !line.isNot ? line : listLine("all", [line]);
}

function lineOf(condition: SentCondition): ConditionLine {
  if ("item" in condition) return itemLine(condition.item);
  if ("fact" in condition)
    return { ...factLine(), kind: "fact", fact: condition.fact, atLeast: `${condition.atLeast}` };
  if ("all" in condition) return listLine("all", condition.all.map(lineOf));
  if ("any" in condition) return listLine("any", condition.any.map(lineOf));
  const denied = lineOf(condition.not);
  // Denied twice it stands as it is inside a list of its own, which can say so.
  return denied.isNot ? { ...listLine("all", [denied]), isNot: true } : { ...denied, isNot: true };
}

/** What is sent; null where there is no line. A list of one line is that line. */
export function sentCondition(list: ConditionList): SentCondition | null {
  if (list.lines.length === 0) return null;
  return sent({ ...list, isNot: false });
}

function sent(line: ConditionLine): SentCondition {
  const plain = plainly(line);
  return line.isNot ? { not: plain } : plain;
}

function plainly(line: ConditionLine): SentCondition {
  if (line.kind === "item") return { item: line.item };
  if (line.kind === "fact") return { fact: line.fact, atLeast: line.atLeast };
  const lines = line.lines.map(sent);
  const [only] = lines;
  if (lines.length === 1 && only) return only;
  return line.join === "all" ? { all: lines } : { any: lines };
}
