"use client";

import {
  Text,
  UNSTABLE_Toast as Toast,
  UNSTABLE_ToastContent as ToastContent,
  UNSTABLE_ToastQueue as ToastQueue,
  UNSTABLE_ToastRegion as ToastRegion,
} from "react-aria-components";
import { Button } from "./button";

interface Announcement {
  readonly sentence: string;
  readonly kind: "saved" | "refused";
  readonly undo?: () => void;
}

interface AnnounceOptions {
  readonly kind?: Announcement["kind"];
  /** Offered as a button for as long as the sentence stands. */
  readonly undo?: () => void;
}

const queue = new ToastQueue<Announcement>({ maxVisibleToasts: 2 });

// WCAG 2.2 SC 2.2.1: long enough to read; anything with an undo stays until it is answered.
const READING_TIME_MS = 7_000;

/** Says in one sentence what has just happened, without taking the focus. Answers what takes it away again. */
export function announce(sentence: string, options: AnnounceOptions = {}): () => void {
  const { kind = "saved", undo } = options;
  const key = queue.add(
    undo === undefined ? { sentence, kind } : { sentence, kind, undo },
    undo === undefined && kind === "saved" ? { timeout: READING_TIME_MS } : {},
  );
  return () => queue.close(key);
}

/** Where announcements appear; the root layout has one. */
export function Announcements() {
  return (
    <ToastRegion queue={queue} className="toasts" aria-label="Announcements">
      {({ toast }) => (
        <Toast toast={toast} className="toast" data-kind={toast.content.kind}>
          <ToastContent className="toast-sentence">
            <Text slot="title">{toast.content.sentence}</Text>
          </ToastContent>
          {toast.content.undo && (
            <Button
              onPress={() => {
                toast.content.undo?.();
                queue.close(toast.key);
              }}
            >
              Undo
            </Button>
          )}
          <Button slot="close" variant="plain" aria-label="Dismiss">
            Dismiss
          </Button>
        </Toast>
      )}
    </ToastRegion>
  );
}
