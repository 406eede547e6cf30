/** A line as versions are compared by: the same kind and code is the same line. */
export type ComparedLine = {
  readonly kind: string;
  readonly code: string;
  readonly description: string;
  readonly quantity: string;
  readonly unit: string;
  readonly discountPct: string;
  /** What one of it costs before any discount. */
  readonly unitPriceMinor: number;
  /** What the customer pays for it, tax included. */
  readonly grossMinor: number;
};

export type LineChange =
  | { readonly kind: "added"; readonly after: ComparedLine }
  | { readonly kind: "removed"; readonly before: ComparedLine }
  | { readonly kind: "changed"; readonly before: ComparedLine; readonly after: ComparedLine };

/** What became of the lines from one version to another, in the order a reader meets them. */
export function versionDifference(
  before: readonly ComparedLine[],
  after: readonly ComparedLine[],
): readonly LineChange[] {
  const keyOf = ({ kind, code }: ComparedLine) => `${kind} ${code}`;
  const earlier = new Map(before.map((line) => [keyOf(line), line]));
  const later = new Set(after.map(keyOf));
  const kept = after.flatMap((line): readonly LineChange[] => {
    const was = earlier.get(keyOf(line));
    if (!was) return [{ kind: "added", after: line }];
    return isSame(was, line) ? [] : [{ kind: "changed", before: was, after: line }];
  });
  const gone = before.filter((line) => !later.has(keyOf(line)));
  return [...kept, ...gone.map((line): LineChange => ({ kind: "removed", before: line }))];
}

/** In words, without the amounts, which stand beside. */
export function changeInWords(change: LineChange): string {
  switch (change.kind) {
    case "added":
      return `${change.after.description} added${times(change.after)}`;
    case "removed":
      return `${change.before.description} taken off`;
    case "changed": {
      const { before, after } = change;
      const parts = [
        before.description === after.description ? null : `now called ${after.description}`,
        before.quantity === after.quantity
          ? null
          : `quantity ${before.quantity} → ${after.quantity}${after.unit === "each" ? "" : ` ${after.unit}`}`,
        before.discountPct === after.discountPct
          ? null
          : `discount ${before.discountPct} % → ${after.discountPct} %`,
      ].filter((part) => part !== null);
      return `${before.description}: ${parts.length > 0 ? parts.join(", ") : "price changed"}`;
    }
  }
}

function times({ quantity, unit }: ComparedLine): string {
  if (unit !== "each") return `, ${quantity} ${unit}`;
  return quantity === "1" ? "" : `, ${quantity} of them`;
}

/** A discount off the whole moves what is paid for every line, and is told once, as a change of its own. */
function isSame(one: ComparedLine, other: ComparedLine): boolean {
  return (
    one.description === other.description &&
    one.quantity === other.quantity &&
    one.unit === other.unit &&
    one.discountPct === other.discountPct &&
    one.unitPriceMinor === other.unitPriceMinor
  );
}
