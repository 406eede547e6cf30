import { Figure } from "@/design/figure";
import { Money } from "@/design/money";
import { Section, SheetRow } from "@/design/sheet";
import type { ShownQuote } from "./shown-quote";

type Margin = NonNullable<ShownQuote["margin"]>;

/** What the quote would earn if everything went as quoted; for those who may know. */
export function MarginPanel({ margin, currency }: { readonly margin: Margin; readonly currency: string }) {
  const { netMinor, costMinor, marginBasisPoints } = margin;
  return (
    <Section title="Margin as quoted" aside={<span className="fine">not for the customer</span>}>
      <div>
        <SheetRow label="Sold for">
          <Money minor={netMinor} currency={currency} /> without tax
        </SheetRow>
        <SheetRow label="Costs us">
          <Money minor={costMinor} currency={currency} />
        </SheetRow>
        <SheetRow label="Gross margin">
          {marginBasisPoints === null ? (
            "nothing is charged"
          ) : (
            <>
              <Figure value={marginBasisPoints / 100} unit="%" decimals={1} />
              {", "}
              <Money minor={netMinor - costMinor} currency={currency} />
            </>
          )}
        </SheetRow>
      </div>
    </Section>
  );
}
