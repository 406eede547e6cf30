/** "A", "A and B", "A, B and C". */
export function listed(words: readonly string[], joiner: "and" | "or"): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} ${joiner} ${words.at(-1)}`;
}
