import type { showPackage, ValueOf } from "@buildproof/workshop";
import { Condition } from "@/design/condition";
import { figureText } from "@/design/figure-text";
import { Money } from "@/design/money";
import { Notice } from "@/design/notice";
import { RuledTable } from "@/design/ruled-table";
import { SentenceList } from "@/design/sentence-list";
import { Section } from "@/design/sheet";
import { shareText } from "../owner/share-text";

type OnModel = ValueOf<typeof showPackage>["vehicles"][number];

interface PackageOnModelProps {
  readonly on: OnModel;
  readonly currency: string;
}

/** What a package costs, earns, lacks and keeps on one vehicle. */
export function PackageOnModel({ on, currency }: PackageOnModelProps) {
  const { ledger, margin, findings, doesNotFit, promise } = on;
  const money = (minor: number) => <Money minor={minor} currency={currency} />;
  const amounts = (title: string, of: { netMinor: number; grossMinor: number }) => ({
    id: title,
    cells: { what: title, net: money(of.netMinor), gross: money(of.grossMinor) },
  });
  return (
    <Section
      title={on.modelName}
      aside={
        <Condition
          grade={
            findings.length === 0 && promise.stands !== "not-kept" && doesNotFit.length === 0
              ? "fit"
              : "watch"
          }
        />
      }
    >
      <RuledTable
        caption={`Price of the package on the ${on.modelName}`}
        isCaptionHidden
        columns={[
          { id: "what", title: "Built up of" },
          { id: "net", title: "Without tax", align: "figure" },
          { id: "gross", title: "With tax", align: "figure" },
        ]}
        rows={[
          amounts("Parts and fees", ledger.parts),
          amounts(
            `Labour: ${figureText(ledger.labourHours, 2)} h workshop, ${figureText(ledger.dynoHours, 2)} h dyno`,
            ledger.labour,
          ),
        ]}
        total={{ what: "Package", net: money(ledger.total.netMinor), gross: money(ledger.total.grossMinor) }}
      />
      <p className="fine">
        Costs {money(margin.costMinor)}, earns {shareText(margin.marginBasisPoints)} of its price without tax.
        Parts within {ledger.leadDays} days.
      </p>
      <p>{promise.sentence}</p>
      {doesNotFit.length > 0 && (
        <Notice title="Does not fit this vehicle" kind="blocks">
          <p>{doesNotFit.map(({ name }) => name).join(", ")}</p>
        </Notice>
      )}
      <SentenceList
        label={`What is wrong with it on the ${on.modelName}`}
        sentences={findings.map(({ rule, headline, because, safety, fixes }) => ({
          id: rule,
          sentence: headline,
          note: fixes.length > 0 ? `${because} Put right by ${fixes.slice(0, 3).join(", or ")}.` : because,
          weight: safety ? ("blocks" as const) : ("ordinary" as const),
        }))}
        empty={
          <p className="fine">Nothing is missing and nothing clashes on a sound vehicle of this model.</p>
        }
      />
    </Section>
  );
}
