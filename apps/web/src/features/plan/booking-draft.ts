/** A block that is being entered. */
export interface DraftBlock {
  readonly key: string;
  readonly kind: ResourceKind;
  readonly resourceId: string;
  readonly startsAt: string;
  readonly endsAt: string;
  readonly work: string;
}

export type ResourceKind = "hoist" | "person" | "dyno";

export interface ResourceChoice {
  readonly id: string;
  readonly kind: ResourceKind;
  readonly name: string;
  readonly note: string;
}

export interface BookableJob {
  readonly id: string;
  /** "Job 1003 · 1AB 2CD · A. Okafor". */
  readonly label: string;
  readonly points: readonly UnmetPoint[];
  readonly work: readonly JobWork[];
}

export interface UnmetPoint {
  readonly point: string;
  readonly title: string;
  readonly sentence: string;
  readonly resolve: string;
  readonly safety: boolean;
}

export interface JobWork {
  readonly name: string;
  readonly place: string;
  readonly stage: string;
}

export const kindWords: Readonly<Record<ResourceKind, string>> = {
  hoist: "Hoist",
  person: "Technician",
  dyno: "Dyno",
};

/** The three that most work needs; what stays "not needed" is not sent. */
export function firstDraft(day: string, work: readonly JobWork[]): readonly DraftBlock[] {
  // The inspection came before; the visit after is a booking of its own.
  const ours = work.filter(({ stage }) => stage !== "inspection" && stage !== "after");
  const onDyno = ours.find(({ place }) => place === "dyno")?.name ?? "";
  const onHoist = ours.find(({ place }) => place === "hoist")?.name ?? ours[0]?.name ?? "";
  const times = { startsAt: `${day}T08:00`, endsAt: `${day}T16:00` };
  return [
    { key: "0", kind: "hoist", resourceId: "", work: onHoist, ...times },
    { key: "1", kind: "person", resourceId: "", work: onHoist, ...times },
    { key: "2", kind: "dyno", resourceId: "", work: onDyno, ...times },
  ];
}

/** Puts a place that was pointed at on the plan into the draft: into the free row of its kind, or a new one. */
export function withPlace(
  draft: readonly DraftBlock[],
  place: { readonly resource: ResourceChoice; readonly startsAt: string; readonly endsAt: string },
): readonly DraftBlock[] {
  const { resource, startsAt, endsAt } = place;
  const given = { resourceId: resource.id, startsAt, endsAt };
  const row =
    draft.find(({ resourceId }) => resourceId === resource.id) ??
    draft.find(({ kind, resourceId }) => kind === resource.kind && resourceId === "");
  if (row) return draft.map((block) => (block.key === row.key ? { ...block, ...given } : block));
  return [...draft, { key: nextKey(draft), kind: resource.kind, work: "", ...given }];
}

export function withNewBlock(draft: readonly DraftBlock[]): readonly DraftBlock[] {
  const last = draft.at(-1);
  if (!last) return draft;
  return [...draft, { ...last, key: nextKey(draft), resourceId: "" }];
}

function nextKey(draft: readonly DraftBlock[]): string {
  return String(Math.max(-1, ...draft.map(({ key }) => Number(key))) + 1);
}
