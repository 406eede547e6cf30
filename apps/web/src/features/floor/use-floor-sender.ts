"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { requestKey } from "@/design/forms/request-key";
import { type DeviceEntries, openDeviceEntries } from "./device-entries";
import type { FloorEntry } from "./floor-entry";
import { type Sent, sendEntry } from "./send-entry";
import { sendRound } from "./send-round";

const RETRY_MS = 15_000;

export type Press = Pick<FloorEntry, "use" | "input" | "jobId" | "label" | "photo">;

export type FloorSender = {
  /** Keeps the press on the device, sends it, and says what became of it. */
  readonly press: (press: Press) => Promise<Sent>;
  /** What this person has entered and the workshop does not have yet. */
  readonly waiting: readonly FloorEntry[];
  /** Entries of somebody else who used this device. */
  readonly ofOthers: number;
  readonly outlastsThePage: boolean;
  /** When the workshop last took an entry; null before the first. */
  readonly savedAt: string | null;
  /** Why the last try did not get through. */
  readonly because: string | null;
  readonly sendAgain: () => Promise<void>;
  readonly forget: (key: string) => Promise<void>;
};

/** Sends what is pressed on the floor, and keeps on the device what has not got through. */
export function useFloorSender(
  personId: string,
  onSaved: (saved: readonly FloorEntry[]) => void,
): FloorSender {
  const entries = useRef<Promise<DeviceEntries> | null>(null);
  const sending = useRef<Promise<void>>(Promise.resolve());
  const [held, setHeld] = useState<readonly FloorEntry[]>([]);
  const [outlastsThePage, setOutlasts] = useState(true);
  const [savedAt, setSavedAt] = useState<string | null>(null);
  const [because, setBecause] = useState<string | null>(null);

  const device = useCallback(() => {
    entries.current ??= openDeviceEntries();
    return entries.current;
  }, []);

  const look = useCallback(async () => {
    const kept = await device();
    setOutlasts(kept.outlastsThePage);
    setHeld(await kept.list());
  }, [device]);

  /** Sends everything in order; answers what became of the entry with this key. */
  const sendAll = useCallback(
    async (wanted: string | null): Promise<Sent | null> => {
      const round = await sendRound(await device(), { personId, wanted }, sendEntry);
      setBecause(round.because);
      if (round.savedAt) setSavedAt(round.savedAt);
      // First what is there now, then what is here no more: nothing looks undone in between.
      if (round.saved.length > 0) onSaved(round.saved);
      await look();
      return round.outcome;
    },
    [device, look, onSaved, personId],
  );

  /** One round at a time, so that entries go in order. */
  const queue = useCallback(
    (wanted: string | null): Promise<Sent | null> => {
      const round = sending.current.then(() => sendAll(wanted));
      sending.current = round.then(
        () => undefined,
        () => undefined,
      );
      return round;
    },
    [sendAll],
  );

  const press = useCallback(
    async (pressed: Press): Promise<Sent> => {
      const madeAt = new Date().toISOString();
      const key = requestKey();
      const entry: FloorEntry = {
        ...pressed,
        input: { ...pressed.input, at: madeAt },
        key,
        personId,
        madeAt,
      };
      await (await device()).put(entry);
      return (await queue(key)) ?? { kind: "waits", because: "Earlier entries are still on this device." };
    },
    [device, personId, queue],
  );

  const sendAgain = useCallback(async () => {
    const kept = await device();
    for (const { refused, ...entry } of await kept.list()) if (refused) await kept.put(entry);
    await queue(null);
  }, [device, queue]);

  const forget = useCallback(
    async (key: string) => {
      await (await device()).remove(key);
      await look();
    },
    [device, look],
  );

  useEffect(() => {
    void queue(null);
    const retry = () => void queue(null);
    window.addEventListener("online", retry);
    const timer = window.setInterval(retry, RETRY_MS);
    return () => {
      window.removeEventListener("online", retry);
      window.clearInterval(timer);
    };
  }, [queue]);

  return {
    press,
    waiting: held.filter((entry) => entry.personId === personId),
    ofOthers: held.filter((entry) => entry.personId !== personId).length,
    outlastsThePage,
    savedAt,
    because,
    sendAgain,
    forget,
  };
}
