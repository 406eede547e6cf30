"use client";

import type { ShownSheet } from "@buildproof/workshop";
import { Figure } from "@/design/figure";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { Section } from "@/design/sheet";
import { AlternativesSection } from "./alternatives-section";
import { dateText, daysText, hoursText } from "./build-words";

const columns = [
  { id: "what", title: "" },
  { id: "hours", title: "Hours", align: "figure" },
  { id: "amount", title: "Amount", align: "figure" },
] as const;

/** What the build comes to, as it stands and with what is missing. */
export function LedgerSection({ sheet }: { readonly sheet: ShownSheet }) {
  const { ledger, site } = sheet;
  const money = (minor: number) => <Money minor={minor} currency={site.currency} />;
  return (
    <Section title="What it comes to" aside={<span className="fine">including tax</span>}>
      <RuledTable
        caption="What it comes to"
        isCaptionHidden
        columns={columns}
        rows={[
          {
            id: "parts",
            cells: { what: "Parts, kits and fees", hours: "", amount: money(ledger.parts.grossMinor) },
          },
          {
            id: "labour",
            cells: {
              what: (
                <>
                  Labour and dyno
                  {ledger.savedHours > 0 && (
                    <span className="sentence-note">
                      shared access counted once: {hoursText(ledger.savedHours)} saved
                    </span>
                  )}
                </>
              ),
              hours: <HoursOf ledger={ledger} />,
              amount: money(ledger.labour.grossMinor),
            },
          },
        ]}
        total={{ what: "As chosen", hours: "", amount: money(ledger.total.grossMinor) }}
      />
      <dl className="grid gap-1">
        <Line label="Tax in it">{money(ledger.total.taxMinor)}</Line>
        <Line label="Parts here by">
          {ledger.leadDays === 0
            ? "in stock, today"
            : `${dateText(sheet.partsBy)}, ${daysText(ledger.leadDays)} if ordered today`}
        </Line>
      </dl>
      <AlternativesSection sheet={sheet} />
      <PackagePromise sheet={sheet} />
    </Section>
  );
}

function HoursOf({ ledger }: { readonly ledger: ShownSheet["ledger"] }) {
  return (
    <>
      <Figure value={ledger.labourHours} unit="h" decimals={1} />
      {ledger.dynoHours > 0 && (
        <span className="sentence-note">
          dyno <Figure value={ledger.dynoHours} unit="h" decimals={1} />
        </span>
      )}
    </>
  );
}

function Line({ label, children }: { readonly label: string; readonly children: React.ReactNode }) {
  return (
    <div className="flex flex-wrap justify-between gap-x-4">
      <dt>{label}</dt>
      <dd className="font-semibold">{children}</dd>
    </div>
  );
}

function PackagePromise({ sheet }: { readonly sheet: ShownSheet }) {
  const promise = sheet.package?.promise;
  if (!sheet.package || !promise) return null;
  return (
    <div>
      <p>
        <strong>
          {promise.lowKw}–{promise.highKw} kW at the {promise.at}
        </strong>
        , {promise.referenceCondition}
      </p>
      <p className="fine">
        Package promise of {sheet.package.name}, not a forecast. {promise.remedy}
      </p>
    </div>
  );
}
