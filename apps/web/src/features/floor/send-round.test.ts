import { describe, expect, test } from "vitest";
import type { DeviceEntries } from "./device-entries";
import type { FloorEntry } from "./floor-entry";
import type { Sent } from "./send-entry";
import { sendRound } from "./send-round";

function device(...entries: readonly FloorEntry[]): DeviceEntries & { now(): readonly FloorEntry[] } {
  const held = new Map(entries.map((entry) => [entry.key, entry]));
  return {
    outlastsThePage: true,
    list: async () => [...held.values()],
    put: async (entry) => void held.set(entry.key, entry),
    remove: async (key) => void held.delete(key),
    now: () => [...held.values()],
  };
}

const entry = (key: string, more: Partial<FloorEntry> = {}): FloorEntry => ({
  key,
  use: "record-step",
  input: { stepId: key },
  personId: "tilda",
  jobId: "job",
  label: key,
  madeAt: "2026-11-25T09:00:00Z",
  ...more,
});

const saved: Sent = { kind: "saved", at: "2026-11-25T09:01:00Z" };
const waits: Sent = { kind: "waits", because: "The workshop does not answer." };
const refused: Sent = { kind: "refused", code: "held", sentence: "Stop." };
const mine = { personId: "tilda", wanted: null };

describe("sending what is on the device", () => {
  test("an entry leaves the device only when the workshop has it", async () => {
    const kept = device(entry("a"), entry("b"));
    const round = await sendRound(kept, mine, async ({ key }) => (key === "a" ? saved : waits));
    expect(kept.now().map(({ key }) => key)).toEqual(["b"]);
    expect(round).toMatchObject({ outcome: null, savedAt: saved.at, because: waits.because });
    expect(round.saved.map(({ key }) => key)).toEqual(["a"]);
  });

  test("nothing overtakes an entry that cannot get through", async () => {
    const tried: string[] = [];
    await sendRound(device(entry("a"), entry("b")), mine, async ({ key }) => {
      tried.push(key);
      return waits;
    });
    expect(tried).toEqual(["a"]);
  });

  test("what is refused while nobody looks stays with its reason, and the rest goes on", async () => {
    const kept = device(entry("a"), entry("b"));
    await sendRound(kept, mine, async ({ key }) => (key === "a" ? refused : saved));
    expect(kept.now()).toMatchObject([{ key: "a", refused: "Stop." }]);
    const again = await sendRound(kept, mine, async () => saved);
    expect(again.savedAt).toBeNull();
    expect(kept.now()).toHaveLength(1);
  });

  test("what is refused on the screen is answered there and leaves the device", async () => {
    const kept = device(entry("a"));
    const round = await sendRound(kept, { personId: "tilda", wanted: "a" }, async () => refused);
    expect(round.outcome).toEqual(refused);
    expect(kept.now()).toEqual([]);
  });

  test("another person's entries are not sent in this one's name", async () => {
    const kept = device(entry("a", { personId: "joss" }));
    await sendRound(kept, mine, async () => saved);
    expect(kept.now()).toHaveLength(1);
  });
});
