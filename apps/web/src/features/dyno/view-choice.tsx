import Link from "next/link";
import type { Figures } from "./overlay-runs";

interface ViewChoiceProps {
  readonly path: string;
  readonly figures: Figures;
  /** Kept while the figures change: whose runs are looked at. */
  readonly session?: string | undefined;
}

const titles: readonly (readonly [Figures, string])[] = [
  ["corrected", "Corrected"],
  ["observed", "As observed"],
];

/** Corrected or as observed: both can always be had. */
export function ViewChoice({ path, figures, session }: ViewChoiceProps) {
  return (
    <nav className="dyno-views no-print" aria-label="Figures">
      {titles.map(([id, title]) => (
        <Link key={id} href={dynoHref(path, id, session)} aria-current={id === figures ? "true" : undefined}>
          {title}
        </Link>
      ))}
      {session && <Link href={dynoHref(path, figures)}>All sessions</Link>}
    </nav>
  );
}

export function dynoHref(path: string, figures: Figures, session?: string): string {
  const query = new URLSearchParams({
    ...(figures === "observed" ? { figures } : {}),
    ...(session ? { session } : {}),
  });
  const text = query.toString();
  return text === "" ? path : `${path}?${text}`;
}

export function figuresFrom(asked: string | undefined): Figures {
  return asked === "observed" ? "observed" : "corrected";
}
