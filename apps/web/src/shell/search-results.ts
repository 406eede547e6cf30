/** What `GET /api/search?q=` answers. Without a question: what was opened last. */
export interface SearchResults {
  readonly groups: readonly SearchGroup[];
  /** What can be made from the words typed: a new plate or VIN offers a new vehicle. */
  readonly offers: readonly { readonly title: string; readonly href: string }[];
}

export interface SearchGroup {
  readonly kind: string;
  readonly label: string;
  readonly hits: readonly SearchHit[];
}

interface SearchHit {
  readonly id: string;
  readonly title: string;
  readonly detail?: string;
  readonly href: string;
}

/** A line of the list that can be opened, in the order it stands on the screen. */
export interface SearchLine {
  readonly key: string;
  readonly href: string;
}

export function linesOf(results: SearchResults): readonly SearchLine[] {
  const hits = results.groups.flatMap((group) =>
    group.hits.map((hit) => ({ key: `${group.kind}-${hit.id}`, href: hit.href })),
  );
  const offers = results.offers.map((offer, index) => ({ key: `offer-${index}`, href: offer.href }));
  return [...hits, ...offers];
}

/** Where the arrows lead: round the list, and from nowhere to its near end. */
export function stepThrough(count: number, at: number | null, step: 1 | -1): number | null {
  if (count === 0) return null;
  if (at === null) return step === 1 ? 0 : count - 1;
  return (at + step + count) % count;
}
