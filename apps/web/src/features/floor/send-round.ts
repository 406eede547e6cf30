import type { DeviceEntries } from "./device-entries";
import type { FloorEntry } from "./floor-entry";
import type { Sent } from "./send-entry";

export type Round = {
  /** What became of the entry that somebody waits for; null when its turn did not come. */
  readonly outcome: Sent | null;
  readonly savedAt: string | null;
  /** What the workshop has taken in this round. */
  readonly saved: readonly FloorEntry[];
  /** Why the round stopped before its end. */
  readonly because: string | null;
};

/**
 * Sends a person's entries in the order in which they were made, and stops at the first that cannot get
 * through. An entry leaves the device when the workshop has it; one that is refused while nobody looks stays
 * with its reason, and the person decides. What is refused on the screen is answered there.
 */
export async function sendRound(
  kept: DeviceEntries,
  whose: { readonly personId: string; readonly wanted: string | null },
  send: (entry: FloorEntry) => Promise<Sent>,
): Promise<Round> {
  let round: Round = { outcome: null, savedAt: null, saved: [], because: null };
  for (const entry of await kept.list()) {
    const isWanted = entry.key === whose.wanted;
    if (entry.personId !== whose.personId || (entry.refused && !isWanted)) continue;
    const sent = await send(entry);
    if (isWanted) round = { ...round, outcome: sent };
    if (sent.kind === "waits") return { ...round, because: sent.because };
    if (sent.kind === "saved") round = { ...round, savedAt: sent.at, saved: [...round.saved, entry] };
    await settle(kept, entry, sent, isWanted);
  }
  return round;
}

async function settle(kept: DeviceEntries, entry: FloorEntry, sent: Sent, isWanted: boolean): Promise<void> {
  if (sent.kind === "refused" && !isWanted) await kept.put({ ...entry, refused: sent.sentence });
  else await kept.remove(entry.key);
}
