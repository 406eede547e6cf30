import type { Span } from "./plan-question";

/** In order, touching and overlapping ones merged, empty ones left out. */
export function mergedSpans(spans: readonly Span[]): readonly Span[] {
  const merged: [number, number][] = [];
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    const last = merged.at(-1);
    if (from >= to) continue;
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else merged.push([from, to]);
  }
  return merged;
}

/** What lies in a span of both lists; each of them merged. */
export function commonSpans(one: readonly Span[], other: readonly Span[]): readonly Span[] {
  const common: Span[] = [];
  let at = 0;
  for (const [from, to] of one) {
    while ((other[at]?.[1] ?? Number.POSITIVE_INFINITY) <= from) at += 1;
    for (let next = at; (other[next]?.[0] ?? Number.POSITIVE_INFINITY) < to; next += 1) {
      const [otherFrom = 0, otherTo = 0] = other[next] ?? [];
      common.push([Math.max(from, otherFrom), Math.min(to, otherTo)]);
    }
  }
  return common;
}
