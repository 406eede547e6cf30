"use client";

import { useEffect, useState } from "react";

const AFTER_MS = 250;

/** The rule as one sentence as soon as it is finished, else what is missing; asked for while it is put together. */
export function RuleReadBack({ versionId, rule }: { readonly versionId: string; readonly rule: object }) {
  const [said, setSaid] = useState("");
  const asked = JSON.stringify({ versionId, rule });
  useEffect(() => {
    const leave = new AbortController();
    const timer = setTimeout(async () => {
      try {
        const answer = await fetch(`/api/catalogue/rule?${new URLSearchParams({ asked })}`, {
          signal: leave.signal,
        });
        const { sentence } = await answer.json();
        if (typeof sentence === "string") setSaid(sentence);
      } catch {
        // Off the network or overtaken by the next change; saving says what is wrong.
      }
    }, AFTER_MS);
    return () => {
      clearTimeout(timer);
      leave.abort();
    };
  }, [asked]);
  return (
    <output className="rule-read-back" aria-label="The rule in one sentence">
      {said || "Choose on; the rule stands here as one sentence."}
    </output>
  );
}
