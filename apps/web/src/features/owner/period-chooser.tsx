import { type OwnerPeriod, ownerPeriods } from "@buildproof/workshop";
import Link from "next/link";
import { over, periodWords } from "./period-words";

/** How far back the page looks, and the same as a file. */
export function PeriodChooser({
  path,
  period,
  code,
}: {
  readonly path: string;
  readonly period: OwnerPeriod;
  /** What the file holds: a package, single work, or all work. */
  readonly code: string;
}) {
  return (
    <>
      <nav aria-label="Period" className="flex flex-wrap gap-x-4 gap-y-1">
        {ownerPeriods.map((entry) => (
          <Link
            key={entry}
            href={over(path, entry)}
            className="navigation-link"
            aria-current={entry === period ? "page" : undefined}
          >
            {capital(periodWords[entry])}
          </Link>
        ))}
      </nav>
      <a
        className="button"
        data-variant="quiet"
        href={`/api/owner/margins?code=${code}&period=${period}`}
        download
      >
        Export CSV
      </a>
    </>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
