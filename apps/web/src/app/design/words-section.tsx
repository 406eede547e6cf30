import { Button } from "@/design/button";
import { Condition } from "@/design/condition";
import { EmptyState } from "@/design/empty-state";
import { ErrorState } from "@/design/error-state";
import { Figure } from "@/design/figure";
import { Loading } from "@/design/loading";
import { Money } from "@/design/money";
import { Notice } from "@/design/notice";
import { RuledTable } from "@/design/ruled-table";
import { SentenceList } from "@/design/sentence-list";
import { Section, SheetRow } from "@/design/sheet";

export function SentencesSection() {
  return (
    <Section title="Owed today, in order">
      <SentenceList
        label="Owed today"
        sentences={[
          {
            id: "1",
            sentence: "Variation 77 waits for the customer since 09:10; the wagon holds hoist 2.",
            action: <Button>Call A. Okafor</Button>,
            weight: "blocks",
          },
          {
            id: "2",
            sentence: "Quote 1042 for A. Okafor’s Ridgewold lapses tomorrow.",
            note: "Issued 11 days ago, opened twice",
            action: <Button variant="primary">Remind</Button>,
          },
          {
            id: "3",
            sentence: "Deposit for job 318 not received; its hoist is held until Friday.",
            action: <Button>Record the deposit</Button>,
          },
        ]}
      />
    </Section>
  );
}

export function TableSection() {
  const rows = [
    { id: "1", what: "Pellavane blower kit, 2.4 L/rev", hours: 14.5, minor: 1_189_000 },
    { id: "2", what: "Vellis high-pressure pump upgrade", hours: 2.7, minor: 194_000 },
    { id: "3", what: "Calibration, petrol 98", hours: 6, minor: 165_000 },
  ];
  return (
    <Section title="Quote lines">
      <RuledTable
        caption="Quote lines"
        isCaptionHidden
        columns={[
          { id: "what", title: "Item" },
          { id: "condition", title: "Stock" },
          { id: "hours", title: "Labour", align: "figure" },
          { id: "price", title: "Price", align: "figure" },
        ]}
        rows={rows.map((row, index) => ({
          id: row.id,
          cells: {
            what: row.what,
            condition: <Condition grade={(["fit", "watch", "stop"] as const)[index] ?? "fit"} />,
            hours: <Figure value={row.hours} unit="h" decimals={1} />,
            price: <Money minor={row.minor} currency="AUD" />,
          },
        }))}
        total={{
          what: "Total without tax",
          hours: <Figure value={23.2} unit="h" decimals={1} />,
          price: <Money minor={1_548_000} currency="AUD" />,
        }}
      />
      <SheetRow label="Fuel">
        <p>Nothing chosen. Short: high-pressure pump, by 9 %.</p>
      </SheetRow>
      <SheetRow label="Wheels and tyres">
        <p>
          33x12.50R18, speedometer <Figure value={-4} unit="%" signed />
        </p>
      </SheetRow>
    </Section>
  );
}

export function StatesSection() {
  return (
    <Section title="Nothing, something wrong, not yet">
      <Notice title="Fuel under pressure">
        <p>Relieve the rail before opening it, and follow the maker’s procedure and local rules.</p>
      </Notice>
      <Notice title="This job cannot be booked yet" kind="blocks">
        <ul>
          <li>The deposit has not been received.</li>
          <li>The pump upgrade is not in the building.</li>
        </ul>
      </Notice>
      <EmptyState
        sentence="No quotes yet. A quote is made from a build sheet."
        action={<Button>Start a build</Button>}
      />
      <ErrorState
        sentence="The dyno log could not be read: line 214 has text where a torque should be."
        next="Export the run again as CSV and import it once more; nothing of it was stored."
        reference="6c1f"
      />
      <Loading />
    </Section>
  );
}
