import { Money } from "@/design/money";
import { moneyText } from "@/design/money-text";
import { RuledTable } from "@/design/ruled-table";
import { Section } from "@/design/sheet";

interface Difference {
  readonly currency: string;
  readonly from: number;
  readonly to: number;
  readonly changes: readonly {
    readonly id: string;
    readonly words: string;
    readonly beforeMinor: number | null;
    readonly afterMinor: number | null;
  }[];
  /** What became of the forecast and its assumptions, in words. */
  readonly forecast: readonly string[];
  readonly totals: { readonly beforeMinor: number; readonly afterMinor: number };
}

/** What changed from one version to the next, line by line, with what the customer pays before and after. */
export function DifferenceTable({ difference }: { readonly difference: Difference }) {
  const { currency, from, to, changes, forecast, totals } = difference;
  const amount = (minor: number | null) =>
    minor === null ? "–" : <Money minor={minor} currency={currency} />;
  return (
    <Section title={`What changed from version ${from} to version ${to}`}>
      <RuledTable
        caption={`What changed from version ${from} to version ${to}`}
        isCaptionHidden
        columns={[
          { id: "words", title: "Change" },
          { id: "before", title: `Version ${from}`, align: "figure" },
          { id: "after", title: `Version ${to}`, align: "figure" },
        ]}
        rows={changes.map(({ id, words, beforeMinor, afterMinor }) => ({
          id,
          cells: { words, before: amount(beforeMinor), after: amount(afterMinor) },
        }))}
        total={{
          words: `Total with tax, ${differenceWords(totals, currency)}`,
          before: amount(totals.beforeMinor),
          after: amount(totals.afterMinor),
        }}
        empty={<p>The lines are the same, and so is the total.</p>}
      />
      {forecast.length > 0 && (
        <ul className="grid gap-1" aria-label="What changed in the forecast">
          {forecast.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </Section>
  );
}

function differenceWords(totals: Difference["totals"], currency: string) {
  const more = totals.afterMinor - totals.beforeMinor;
  if (more === 0) return "unchanged";
  const amount = moneyText(Math.abs(more), currency);
  return more > 0 ? `${amount} more` : `${amount} less`;
}
