import type { GatePlace, GatePoint } from "@buildproof/workshop";
import Link from "next/link";
import { Section } from "@/design/sheet";

interface GateSectionProps {
  readonly points: readonly GatePoint[];
  readonly hrefs: Readonly<Record<GatePlace, string>>;
}

const placeWords: Readonly<Record<GatePlace, string>> = {
  build: "Open the build",
  dyno: "Open the dyno page",
  quote: "Open the quote",
  job: "",
  "hand-over": "Open obligations",
};

/** Every point of the booking gate in one place: met or not, why, and who moves it on. */
export function GateSection({ points, hrefs }: GateSectionProps) {
  const open = points.filter(({ met, overridden }) => !met && overridden === null).length;
  return (
    <Section
      title="Booking gate"
      aside={<span className="fine">{open === 0 ? "every point is met" : `${open} open`}</span>}
    >
      <ul className="sentences" aria-label="Points of the booking gate">
        {points.map((point) => (
          <GateLine key={point.point} point={point} href={hrefs[point.place]} />
        ))}
      </ul>
    </Section>
  );
}

function GateLine({ point, href }: { readonly point: GatePoint; readonly href: string }) {
  const { met, overridden, title, sentence, resolve, safety, place } = point;
  const isOpen = !met && overridden === null;
  const words = placeWords[place];
  return (
    <li className="sentence" data-weight={isOpen ? "blocks" : "ordinary"}>
      <div>
        <strong>{standingWords(met, overridden !== null)}</strong> {title}
        <span className="sentence-note">{withoutTitle(sentence, title)}</span>
        {overridden && (
          <span className="sentence-note">{`Overridden by ${overridden.by}: ${overridden.reason}`}</span>
        )}
        {isOpen && resolve && <span className="sentence-note">{resolve}</span>}
        {isOpen && safety && (
          <span className="sentence-note">
            <strong>Safety: no override.</strong>
          </span>
        )}
      </div>
      {isOpen && words && (
        <div className="sentence-action">
          <Link href={href}>{words}</Link>
        </div>
      )}
    </li>
  );
}

function standingWords(met: boolean, overridden: boolean): string {
  if (met) return "Met:";
  return overridden ? "Overridden:" : "Not met:";
}

/** A sentence that begins with the title does not say it twice. */
function withoutTitle(sentence: string, title: string): string {
  return sentence.startsWith(`${title}. `) ? sentence.slice(title.length + 2) : sentence;
}
