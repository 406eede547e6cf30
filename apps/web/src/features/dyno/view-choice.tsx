import Link from "next/link";
import { type AskedView, dynoHref, type Figures } from "./asked-view";

interface ViewChoiceProps {
  readonly path: string;
  readonly view: AskedView;
}

const titles: readonly (readonly [Figures, string])[] = [
  ["corrected", "Corrected"],
  ["observed", "As observed"],
];

/** Corrected or as observed: both can always be had. */
export function ViewChoice({ path, view }: ViewChoiceProps) {
  return (
    <nav className="dyno-views no-print" aria-label="Figures">
      {titles.map(([figures, title]) => (
        <Link
          key={figures}
          href={dynoHref(path, { ...view, figures })}
          aria-current={figures === view.figures ? "true" : undefined}
        >
          {title}
        </Link>
      ))}
      {view.chosen.length > 0 && (
        <Link href={dynoHref(path, { ...view, chosen: [] })}>As the page has it</Link>
      )}
    </nav>
  );
}
