import Link from "next/link";
import { Moment } from "@/design/moment";
import { Money } from "@/design/money";
import { SentenceList } from "@/design/sentence-list";
import { Section } from "@/design/sheet";
import type { ShownMargins } from "./shown-margins";

const MOST = 8;

interface LostSectionProps {
  readonly margins: ShownMargins;
  /** Such as "the last 12 months". */
  readonly period: string;
}

/** Quotes that were declined, in the customers' own words. */
export function LostSection({ margins, period }: LostSectionProps) {
  const { lost, currency, timeZone } = margins;
  const more = lost.length - MOST;
  return (
    <Section title="Quotes declined" aside={<span className="fine">{period}, in the customers’ words</span>}>
      {lost.length === 0 ? (
        <p className="fine">No quote was declined in this time.</p>
      ) : (
        <SentenceList
          label="Quotes declined"
          sentences={lost
            .slice(0, MOST)
            .map(({ quoteId, number, customer, grossMinor, declinedAt, because }) => ({
              id: quoteId,
              sentence: (
                <>
                  <Link href={`/quotes/${quoteId}`}>Quote {number}</Link> for {customer},{" "}
                  <Money minor={grossMinor} currency={currency} />:{" "}
                  {because ? `“${because}”` : "no reason given"}
                </>
              ),
              note: <Moment at={declinedAt} timeZone={timeZone} form="day" />,
            }))}
        />
      )}
      {more > 0 && <p className="fine">{`${more} more in this time.`}</p>}
    </Section>
  );
}
