/** A stretch of open minutes, half-open. */
export type Slot = { readonly from: number; readonly to: number };

/** Who and what is taken when, in open minutes. */
export type SlotBook = {
  /**
   * Takes the earliest slot of that length from `earliest` on, with one resource of each group free
   * throughout; null when it would run past the end.
   */
  readonly take: (
    earliest: number,
    length: number,
    groups: readonly (readonly string[])[],
  ) => { readonly slot: Slot; readonly resources: readonly string[] } | null;
};

export function slotBook(end: number): SlotBook {
  const taken = new Map<string, Slot[]>();
  const busy = (resource: string) => taken.get(resource) ?? [];
  /** When the resource is next free for the slot; the slot's own start when it is free now. */
  const freeAt = (resource: string, { from, to }: Slot) =>
    Math.max(from, ...busy(resource).flatMap((slot) => (slot.from < to && slot.to > from ? [slot.to] : [])));

  return {
    take(earliest, length, groups) {
      let from = earliest;
      while (from + length <= end) {
        const slot = { from, to: from + length };
        const found = groups.map((group) => {
          const choices = group.map((resource) => ({ resource, at: freeAt(resource, slot) }));
          return choices.reduce((best, each) => (each.at < best.at ? each : best));
        });
        const latest = Math.max(...found.map(({ at }) => at));
        if (latest === from) {
          for (const { resource } of found) taken.set(resource, [...busy(resource), slot]);
          return { slot, resources: found.map(({ resource }) => resource) };
        }
        from = latest;
      }
      return null;
    },
  };
}
