"use client";

import { createContext, type ReactNode, use, useCallback, useEffect, useMemo, useRef, useState } from "react";
import { announce } from "@/design/toast";
import { changeSheetAction } from "./actions";
import { type SheetChange, takingBack } from "./sheet-change";

type Step = { readonly words: string; readonly change: SheetChange };

/** A step that another person's change overtook: kept, to be done again on the newer sheet. */
type Overtaken = { readonly step: Step; readonly sentence: string };

interface Sheet {
  readonly mayWrite: boolean;
  readonly isSaving: boolean;
  readonly overtaken: Overtaken | null;
  readonly undoWords: string | null;
  readonly redoWords: string | null;
  change(words: string, change: SheetChange): void;
  /** Keeps the way back of a step that a form has already saved. */
  saved(words: string, back: SheetChange): void;
  undo(): void;
  redo(): void;
  repeatOvertaken(): void;
  dropOvertaken(): void;
}

const SheetContext = createContext<Sheet | null>(null);

export function useSheet(): Sheet {
  const sheet = use(SheetContext);
  if (!sheet) throw new Error("outside a build sheet");
  return sheet;
}

interface SheetProviderProps {
  readonly buildId: string;
  readonly revision: number;
  readonly mayWrite: boolean;
  readonly children: ReactNode;
}

/**
 * Sends each step of the sheet as it is done, one after the other, and keeps the way back. Nothing waits for a
 * "save": what is on the screen is at the workshop, or a sentence says that it is not.
 */
export function SheetProvider({ buildId, revision, mayWrite, children }: SheetProviderProps) {
  const [past, setPast] = useState<readonly Step[]>([]);
  const [future, setFuture] = useState<readonly Step[]>([]);
  const [overtaken, setOvertaken] = useState<Overtaken | null>(null);
  const send = useSender(buildId, revision);
  const closeToast = useRef<() => void>(() => {});
  const undoLatest = useRef<() => void>(() => {});

  const run = useCallback(
    async (step: Step, direction: "do" | "undo" | "redo") => {
      const result = await send.step(step.change);
      closeToast.current();
      if (!result.ok) {
        if (result.refusal.code === "stale") setOvertaken({ step, sentence: result.refusal.sentence });
        else closeToast.current = announce(result.refusal.sentence, { kind: "refused" });
        return;
      }
      const back = { words: step.words, change: takingBack(result.value.undo) };
      if (direction === "undo") setFuture((steps) => [...steps, back]);
      else setPast((steps) => [...steps, back]);
      if (direction === "do") setFuture([]);
      closeToast.current =
        direction === "undo"
          ? announce(`Taken back: ${step.words}.`)
          : announce(`${step.words}.`, { undo: () => undoLatest.current() });
    },
    [send],
  );

  const undo = useCallback(() => {
    const step = past.at(-1);
    if (!step) return;
    setPast(past.slice(0, -1));
    void run(step, "undo");
  }, [past, run]);

  const redo = useCallback(() => {
    const step = future.at(-1);
    if (!step) return;
    setFuture(future.slice(0, -1));
    void run(step, "redo");
  }, [future, run]);

  const saved = useCallback((words: string, back: SheetChange) => {
    setPast((steps) => [...steps, { words, change: back }]);
    setFuture([]);
    closeToast.current();
    closeToast.current = announce(`${words}.`, { undo: () => undoLatest.current() });
  }, []);

  useEffect(() => {
    undoLatest.current = undo;
  }, [undo]);
  useUndoKeys(undo, redo);

  const sheet = useMemo<Sheet>(
    () => ({
      mayWrite,
      isSaving: send.isSaving,
      overtaken,
      undoWords: past.at(-1)?.words ?? null,
      redoWords: future.at(-1)?.words ?? null,
      change: (words, change) => void run({ words, change }, "do"),
      saved,
      undo,
      redo,
      repeatOvertaken: () => {
        if (!overtaken) return;
        setOvertaken(null);
        void run(overtaken.step, "do");
      },
      dropOvertaken: () => setOvertaken(null),
    }),
    [mayWrite, send.isSaving, overtaken, past, future, run, saved, undo, redo],
  );
  return <SheetContext value={sheet}>{children}</SheetContext>;
}

/** One step at a time, each on the revision that the one before it left behind. */
function useSender(buildId: string, revision: number) {
  const latest = useRef(revision);
  const queue = useRef<Promise<unknown>>(Promise.resolve());
  const [waiting, setWaiting] = useState(0);

  useEffect(() => {
    // The page drawn anew is the newest there is, unless a step of ours is already past it.
    latest.current = Math.max(latest.current, revision);
  }, [revision]);

  const step = useCallback(
    (change: SheetChange) => {
      const send = async () => {
        const result = await changeSheetAction(buildId, latest.current, change);
        if (result.ok) latest.current = result.value.revision;
        return result;
      };
      setWaiting((count) => count + 1);
      const sent = queue.current.then(send, send);
      queue.current = sent.finally(() => setWaiting((count) => count - 1)).catch(() => {});
      return sent.catch(() => ({
        ok: false as const,
        refusal: {
          code: "not-reached",
          sentence:
            "The workshop was not reached, so this step is not saved. Check the network and do it again.",
        },
      }));
    },
    [buildId],
  );
  return useMemo(() => ({ step, isSaving: waiting > 0 }), [step, waiting]);
}

function useUndoKeys(undo: () => void, redo: () => void) {
  useEffect(() => {
    function onKeyDown(event: KeyboardEvent) {
      const isOurs = (event.ctrlKey || event.metaKey) && !isTyping(event.target);
      const key = event.key.toLowerCase();
      if (!isOurs || (key !== "z" && key !== "y")) return;
      event.preventDefault();
      if (key === "y" || event.shiftKey) redo();
      else undo();
    }
    document.addEventListener("keydown", onKeyDown);
    return () => document.removeEventListener("keydown", onKeyDown);
  }, [undo, redo]);
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && ["INPUT", "TEXTAREA", "SELECT"].includes(target.tagName);
}
