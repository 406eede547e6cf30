"use client";

import type { ProofReport } from "@buildproof/workshop";
import { useEffect, useState } from "react";

type ProofAnswer =
  | { readonly state: "asking" }
  | { readonly state: "told"; readonly report: ProofReport }
  | { readonly state: "failed"; readonly sentence: string };

const NOT_REACHED =
  "The workshop was not reached, so nothing is proven. Check the network, then open the page again.";

/** Asks for the proof after the page is drawn, anew when `stamp` changes, and lets go of it when the page is left. */
export function useProof(versionId: string | null, stamp: string): ProofAnswer {
  const asked = `${versionId ?? ""} ${stamp}`;
  const [answer, setAnswer] = useState<{ readonly of: string; readonly answer: ProofAnswer } | null>(null);
  useEffect(() => {
    const left = new AbortController();
    ask(versionId, left.signal)
      .then((told) => setAnswer({ of: asked, answer: told }))
      .catch(() => {
        if (left.signal.aborted) return;
        setAnswer({ of: asked, answer: { state: "failed", sentence: NOT_REACHED } });
      });
    return () => left.abort();
  }, [versionId, asked]);
  return answer?.of === asked ? answer.answer : { state: "asking" };
}

async function ask(versionId: string | null, signal: AbortSignal): Promise<ProofAnswer> {
  const query = versionId === null ? "" : `?version=${encodeURIComponent(versionId)}`;
  const response = await fetch(`/api/catalogue/proof${query}`, { signal });
  const body: unknown = await response.json();
  if (response.ok) return { state: "told", report: body as ProofReport }; // Written by the route.
  const { error } = body as { readonly error: { readonly sentence: string } }; // As that route writes it.
  return { state: "failed", sentence: error.sentence };
}
