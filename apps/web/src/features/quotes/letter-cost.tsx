import { Money } from "@/design/money";
import { en } from "@/messages/en";
import type { ShownLetter } from "./shown-letter";

/** What it costs: a sum for each kind of thing, every line behind it, and the total. On paper every line is open. */
export function LetterCost({ letter }: { readonly letter: ShownLetter }) {
  const { sections, totals, currency, workshop, hours } = letter;
  const texts = en.letter;
  const money = (minor: number) => <Money minor={minor} currency={currency} />;
  return (
    <div className="grid gap-3">
      <div className="border-t border-ink">
        {sections.map(({ heading, grossMinor, lines }) => (
          <details
            key={heading}
            className="border-b border-rule print:[&::details-content]:[content-visibility:visible]"
          >
            <summary className="flex min-h-12 cursor-pointer items-baseline justify-between gap-4 py-3">
              <span>
                {heading} <span className="fine text-accent underline no-print">{texts.everyLine}</span>
              </span>
              <strong>{money(grossMinor)}</strong>
            </summary>
            <ul className="grid gap-2 pb-4">
              {lines.map(({ id, description, quantity, grossMinor: lineMinor, discountPct }) => (
                <li key={id} className="flex items-baseline justify-between gap-4">
                  <span>
                    {description}
                    <span className="fine">
                      {quantity === "1" ? "" : `, ${quantity}`}
                      {discountPct === "0" ? "" : `, less ${discountPct} %`}
                    </span>
                  </span>
                  {money(lineMinor)}
                </li>
              ))}
            </ul>
          </details>
        ))}
      </div>
      {Number(hours.saved) > 0 && <p className="fine">{texts.shared(hours.saved)}</p>}
      <dl className="grid grid-cols-[1fr_auto] gap-x-4 gap-y-1">
        {totals.discountMinor > 0 && (
          <>
            <dt>{texts.discount(workshop.taxName)}</dt>
            <dd className="text-right">{money(-totals.discountMinor)}</dd>
          </>
        )}
        <dt>{texts.net}</dt>
        <dd className="text-right">{money(totals.netMinor)}</dd>
        <dt>{workshop.taxName}</dt>
        <dd className="text-right">{money(totals.taxMinor)}</dd>
        <dt className="text-xl font-bold">{texts.total(workshop.taxName)}</dt>
        <dd className="text-right text-xl font-bold">{money(totals.grossMinor)}</dd>
      </dl>
    </div>
  );
}
