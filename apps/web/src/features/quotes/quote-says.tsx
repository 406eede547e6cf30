import { Section, SheetRow } from "@/design/sheet";
import type { ShownQuote } from "./shown-quote";

/** What the version says beside its lines. */
export function QuoteSays({ shown }: Pick<ShownQuote, "shown">) {
  const { promise } = shown;
  return (
    <Section title="What it says">
      <div>
        <SheetRow label="Asked for">{shown.goal || "Nothing was noted."}</SheetRow>
        <SheetRow label="Proposed">{shown.proposed}</SheetRow>
        {promise && (
          <SheetRow label="Promised">
            {promise.lowKw}–{promise.highKw} kW at the {promise.at}, {promise.referenceCondition}.{" "}
            <span className="sentence-note">{promise.remedy}</span>
          </SheetRow>
        )}
        <SheetRow label="When">{shown.partsBy}</SheetRow>
        {shown.note && <SheetRow label="Note">{shown.note}</SheetRow>}
        <ListRow label="Included" sentences={shown.inclusions} />
        <ListRow label="Rests on" sentences={shown.assumptions} />
        <ListRow label="Not included" sentences={shown.exclusions} />
        <ListRow label="Cautions" sentences={shown.cautions} />
      </div>
    </Section>
  );
}

function ListRow({ label, sentences }: { readonly label: string; readonly sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  return (
    <SheetRow label={label}>
      <ul className="grid gap-1">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </SheetRow>
  );
}
