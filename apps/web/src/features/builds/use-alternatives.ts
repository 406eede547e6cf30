"use client";

import type { BuildAlternatives } from "@buildproof/workshop";
import { useEffect, useState } from "react";

type Told = BuildAlternatives & { readonly revision: number };

type Answer =
  | { readonly state: "asking" }
  | { readonly state: "told"; readonly told: Told }
  | { readonly state: "failed"; readonly sentence: string };

const NOT_REACHED =
  "The workshop was not reached, so what completes this build is not known. Check the network, then change the sheet or open it again.";

/** Asks what would complete the build, after the sheet is drawn, and lets go of the question when the sheet moves on. */
export function useAlternatives(buildId: string, revision: number, isAsked: boolean): Answer {
  const [answer, setAnswer] = useState<Answer & { readonly of?: number }>({ state: "asking" });
  useEffect(() => {
    if (!isAsked) return;
    const movedOn = new AbortController();
    ask(buildId, movedOn.signal)
      .then((told) => setAnswer({ ...told, of: revision }))
      .catch(() => {
        if (!movedOn.signal.aborted) setAnswer({ state: "failed", sentence: NOT_REACHED, of: revision });
      });
    return () => movedOn.abort();
  }, [buildId, revision, isAsked]);
  return answer.of === revision ? answer : { state: "asking" };
}

async function ask(buildId: string, signal: AbortSignal): Promise<Answer> {
  const response = await fetch(`/api/builds/${buildId}/alternatives`, { signal });
  const body: unknown = await response.json();
  if (response.ok) return { state: "told", told: body as Told }; // Written by the route beside it.
  const { error } = body as { readonly error: { readonly sentence: string } }; // As that route writes it.
  return { state: "failed", sentence: error.sentence };
}
