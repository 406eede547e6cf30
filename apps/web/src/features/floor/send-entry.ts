import type { FloorAnswer, FloorEntry } from "./floor-entry";

/** The workshop cannot take anything now; the entry waits. Everything else it says is about the entry. */
const waits = new Set(["not-signed-in", "session-over", "database-away", "conflict"]);

export type Sent =
  | { readonly kind: "saved"; readonly at: string }
  | { readonly kind: "refused"; readonly sentence: string; readonly field?: string; readonly code: string }
  /** Nobody answered, or nobody is signed in: it stays on the device. */
  | { readonly kind: "waits"; readonly because: string };

/** Sends one entry. Never throws: what happened is the answer. */
export async function sendEntry(entry: FloorEntry): Promise<Sent> {
  const form = new FormData();
  form.set("key", entry.key);
  form.set("use", entry.use);
  form.set("input", JSON.stringify(entry.input));
  if (entry.photo) form.set("photo", entry.photo);
  let answer: FloorAnswer;
  try {
    const response = await fetch("/api/floor/entries", { method: "POST", body: form });
    answer = await response.json();
  } catch {
    return { kind: "waits", because: "The workshop does not answer." };
  }
  if (answer.ok) return { kind: "saved", at: answer.at };
  const { code, sentence, field } = answer.refusal;
  if (waits.has(code)) return { kind: "waits", because: sentence };
  return { kind: "refused", code, sentence, ...(field === undefined ? {} : { field }) };
}
