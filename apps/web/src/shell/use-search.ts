"use client";

import { useEffect, useState } from "react";
import type { SearchResults } from "./search-results";

export type SearchState =
  | { readonly status: "waiting" }
  | { readonly status: "found"; readonly results: SearchResults; readonly question: string }
  | { readonly status: "failed"; readonly sentence: string };

const PAUSE_IN_TYPING_MS = 120;

/** Asks as the person types, and drops an answer that a later letter has overtaken. */
export function useSearch(question: string, isOpen: boolean): SearchState {
  const [state, setState] = useState<SearchState>({ status: "waiting" });

  useEffect(() => {
    if (!isOpen) return;
    const overtaken = new AbortController();
    const ask = async () => {
      const answer = await askWorkshop(question, overtaken.signal);
      if (!overtaken.signal.aborted) setState(answer);
    };
    const timer = setTimeout(ask, question === "" ? 0 : PAUSE_IN_TYPING_MS);
    return () => {
      clearTimeout(timer);
      overtaken.abort();
    };
  }, [question, isOpen]);

  return state;
}

async function askWorkshop(question: string, signal: AbortSignal): Promise<SearchState> {
  try {
    const answer = await fetch(`/api/search?q=${encodeURIComponent(question)}`, { signal });
    if (answer.status === 401) {
      return { status: "failed", sentence: "Your sign-in has ended: sign in again, then search." };
    }
    if (!answer.ok) return { status: "failed", sentence: "The search failed: type again in a moment." };
    // The route is our own and answers in this shape.
    const results = (await answer.json()) as SearchResults;
    return { status: "found", results, question };
  } catch {
    return {
      status: "failed",
      sentence: "The workshop cannot be reached: check the network, then type again.",
    };
  }
}
