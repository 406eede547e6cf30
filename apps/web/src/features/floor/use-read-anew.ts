"use client";

import { useRouter } from "next/navigation";
import { useCallback, useEffect, useRef } from "react";

/** Long enough that a hand going from step to step is never waited for. */
const PAUSE_MS = 4_000;

/** Asks the workshop for the page again: at once, or when the hand has come to rest. */
export function useReadAnew(): (atOnce: boolean) => void {
  const router = useRouter();
  const timer = useRef<number | undefined>(undefined);
  useEffect(() => () => window.clearTimeout(timer.current), []);
  return useCallback(
    (atOnce) => {
      window.clearTimeout(timer.current);
      if (atOnce) router.refresh();
      else timer.current = window.setTimeout(() => router.refresh(), PAUSE_MS);
    },
    [router],
  );
}
