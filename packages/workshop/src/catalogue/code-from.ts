/** A code from a name: "Pump upgrade, 40 %" becomes pump-upgrade-40. */
export function codeFrom(name: string): string {
  const plain = name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 60)
    .replace(/^-+|-+$/g, "");
  return plain || "part";
}
