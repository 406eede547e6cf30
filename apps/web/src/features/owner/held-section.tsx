import { Money } from "@/design/money";
import { Section, SheetRow } from "@/design/sheet";
import type { ShownMargins } from "./shown-margins";

/** Customers' money that is here and not earned yet. */
export function HeldSection({ margins }: { readonly margins: ShownMargins }) {
  const { held, currency } = margins;
  return (
    <Section title="Held as deposits" aside={<span className="fine">for work not invoiced yet, today</span>}>
      <div>
        <SheetRow label="Security deposits">
          <Money minor={held.securityMinor} currency={currency} />
          <span className="sentence-note">Tax falls due when they are used or forfeited.</span>
        </SheetRow>
        <SheetRow label="Part payments">
          <Money minor={held.partMinor} currency={currency} />
          <span className="sentence-note">Tax fell due when they came.</span>
        </SheetRow>
        <SheetRow label="On">{held.quotes === 1 ? "1 quote" : `${held.quotes} quotes`}</SheetRow>
      </div>
    </Section>
  );
}
