import { showSheet, type ValueOf } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { momentText } from "@/design/moment-text";
import { Money } from "@/design/money";
import { Chain } from "@/design/plots/chain";
import { RuledTable } from "@/design/ruled-table";
import { SentenceList } from "@/design/sentence-list";
import { Page, Section, SheetHead } from "@/design/sheet";
import { dateText, daysText, hoursText } from "@/features/builds/build-words";
import { chainPaths, weakestLink } from "@/features/builds/chain-of-build";
import { PrintButton } from "@/features/builds/print-button";
import { ChassisSections } from "@/features/chassis/chassis-sections";
import { fuelText, kilometres } from "@/features/customers/vehicle-words";
import { ForecastDetail } from "@/features/engineering/forecast-detail";
import { ForecastSection } from "@/features/engineering/forecast-section";
import { assumedText } from "@/features/engineering/forecast-words";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";
import "@/features/chassis/chassis.css";

export const metadata: Metadata = { title: "Build sheet to print" };

type Sheet = ValueOf<typeof showSheet>;

const columns = [
  { id: "item", title: "Item" },
  { id: "quantity", title: "Pieces", align: "figure" },
  { id: "hours", title: "Hours", align: "figure" },
  { id: "amount", title: "Amount", align: "figure" },
] as const;

export default async function PrintBuildPage(props: { readonly params: Promise<{ id: string }> }) {
  const { id: buildId } = await props.params;
  const loaded = await load(showSheet, { buildId });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const sheet = loaded.value;
  const { vehicle, site } = sheet;
  return (
    <Page narrow>
      <SheetHead
        title={`Build sheet ${sheet.number}`}
        lead={`${site.name} · ${sheet.customer.name} · ${sheet.goal}`}
        actions={
          <>
            <ButtonLink href={`/builds/${sheet.id}`}>Back to the sheet</ButtonLink>
            <PrintButton />
          </>
        }
        facts={[
          {
            label: "Vehicle",
            value: [vehicle.modelName, vehicle.plate].filter((part) => part !== "").join(" · "),
          },
          { label: "VIN", value: vehicle.vin },
          { label: "Odometer", value: kilometres(vehicle.odometerKm) },
          { label: "Fuel", value: fuelText(vehicle.fuelKind, vehicle.fuelOctane) },
          { label: "Wanted by", value: sheet.wantedBy ? dateText(sheet.wantedBy) : "no day given" },
          { label: "As at", value: momentText(sheet.savedAt, site.timeZone) },
        ]}
      />
      <ChosenTables sheet={sheet} />
      <Open sheet={sheet} />
      <PrintedChain sheet={sheet} />
      <ForecastSection forecast={sheet.forecast} size="full" />
      <ForecastDetail forecast={sheet.forecast} assumptions={<PrintedAssumptions sheet={sheet} />} />
      <ChassisSections chassis={sheet.chassis} isPrinted />
    </Page>
  );
}

function ChosenTables({ sheet }: { readonly sheet: Sheet }) {
  const { ledger, site } = sheet;
  const money = (minor: number) => <Money minor={minor} currency={site.currency} />;
  const lines = sheet.systems.flatMap(({ name, chosen }) =>
    chosen.map((line) => ({ ...line, system: name })),
  );
  const shared =
    ledger.savedHours > 0 ? `, shared access counted once (${hoursText(ledger.savedHours)} saved)` : "";
  return (
    <Section title="What is chosen" aside={<span className="fine">including tax</span>}>
      <RuledTable
        caption="What is chosen"
        isCaptionHidden
        columns={columns}
        rows={[
          ...lines.map((line) => ({
            id: line.code,
            cells: {
              item: (
                <>
                  {line.name}
                  <span className="sentence-note">{line.system}</span>
                </>
              ),
              quantity: line.quantity,
              hours:
                line.labourHours + line.dynoHours === 0 ? "" : hoursText(line.labourHours + line.dynoHours),
              amount: line.grossMinor === 0 ? "by hours" : money(line.grossMinor),
            },
          })),
          {
            id: "labour and dyno",
            cells: {
              item: `Labour ${hoursText(ledger.labourHours)} and dyno ${hoursText(ledger.dynoHours)}${shared}`,
              quantity: "",
              hours: "",
              amount: money(ledger.labour.grossMinor),
            },
          },
        ]}
        total={{ item: "As chosen", quantity: "", hours: "", amount: money(ledger.total.grossMinor) }}
      />
      <p>
        Parts here by {dateText(sheet.partsBy)}
        {ledger.leadDays > 0 && ` (${daysText(ledger.leadDays)} if ordered today)`}.
      </p>
    </Section>
  );
}

function Open({ sheet }: { readonly sheet: Sheet }) {
  return (
    <Section title="What is missing or short">
      <SentenceList
        label="What is missing or short"
        sentences={sheet.findings.map((finding) => ({
          id: finding.rule,
          sentence: <strong>{finding.headline}</strong>,
          note: `${finding.because} (${finding.source})`,
          weight: finding.safety ? "blocks" : "ordinary",
        }))}
        empty={<p>Nothing is missing.</p>}
      />
    </Section>
  );
}

function PrintedChain({ sheet }: { readonly sheet: Sheet }) {
  const weakest = weakestLink(sheet.capacities, sheet.findings);
  if (!weakest) return null;
  return (
    <Section title="The chain">
      <Chain
        caption="Asked against given along the path of air, fuel and torque"
        paths={chainPaths(sheet.capacities)}
        weakest={weakest}
      />
    </Section>
  );
}

function PrintedAssumptions({ sheet }: { readonly sheet: Sheet }) {
  const { forecast, assumptionChanges } = sheet;
  if (forecast.kind !== "forecast") return null;
  return (
    <RuledTable
      caption="Assumed, and whether it is as usual"
      isCaptionHidden
      columns={[
        { id: "what", title: "Assumed" },
        { id: "used", title: "Used", align: "figure" },
        { id: "usual", title: "Usual" },
      ]}
      rows={forecast.assumptions.map(({ name, label, unit, used, usual, isChanged }) => ({
        id: name,
        cells: {
          what: label,
          used: assumedText(used, unit),
          usual: isChanged
            ? `${assumedText(usual, unit)}; ${assumptionChanges[name]?.by ?? ""}: ${assumptionChanges[name]?.reason ?? ""}`
            : "as used",
        },
      }))}
    />
  );
}
