export type Figures = "corrected" | "observed";

/** What the address asks the dyno page to draw. */
export type AskedView = {
  readonly figures: Figures;
  /** Ids of sessions; the page's own where none is named. One alone shows its runs. */
  readonly chosen: readonly string[];
};

export type DynoSearch = { readonly figures?: string; readonly session?: string | readonly string[] };

export function askedView({ figures, session = [] }: DynoSearch): AskedView {
  return {
    figures: figures === "observed" ? "observed" : "corrected",
    chosen: typeof session === "string" ? [session] : session,
  };
}

/** The same page, showing that. */
export function dynoHref(path: string, { figures, chosen }: AskedView): string {
  const query = new URLSearchParams(figures === "observed" ? { figures } : {});
  for (const id of chosen) query.append("session", id);
  const text = query.toString();
  return text === "" ? path : `${path}?${text}`;
}
