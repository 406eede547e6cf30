"use client";

import type { ShownSheet } from "@buildproof/workshop";
import { Page, Stack } from "@/design/sheet";
import { ChassisSections } from "../chassis/chassis-sections";
import { AssumptionList } from "../engineering/assumption-list";
import { ForecastDetail } from "../engineering/forecast-detail";
import { ForecastSection } from "../engineering/forecast-section";
import { InspectionSection } from "./inspection-section";
import { LedgerSection } from "./ledger-section";
import { OvertakenNotice } from "./overtaken-notice";
import { SheetChain } from "./sheet-chain";
import { SheetHeadOfBuild, type Sibling } from "./sheet-head-of-build";
import { SystemRow } from "./system-row";
import { SheetProvider } from "./use-sheet";

interface BuildSheetProps {
  readonly sheet: ShownSheet;
  readonly quote: { readonly id: string; readonly number: number } | null;
  readonly siblings: readonly Sibling[];
  readonly mayWrite: boolean;
  readonly mayInspect: boolean;
  readonly mayAssume: boolean;
}

/** The build sheet: systems down the page, and beside them what follows from what is chosen. */
export function BuildSheet({ sheet, quote, siblings, mayWrite, mayInspect, mayAssume }: BuildSheetProps) {
  return (
    <SheetProvider buildId={sheet.id} revision={sheet.revision} mayWrite={mayWrite}>
      <Page>
        <SheetHeadOfBuild sheet={sheet} quote={quote} siblings={siblings} />
        <OvertakenNotice />
        <div className="grid gap-8 xl:grid-cols-[minmax(0,1.15fr)_minmax(0,1fr)] xl:grid-rows-[auto_1fr]">
          <section aria-label="What is chosen">
            {sheet.systems.map((system) => (
              <SystemRow
                key={system.code}
                system={system}
                buildId={sheet.id}
                revision={sheet.revision}
                currency={sheet.site.currency}
                vehicleId={sheet.vehicle.id}
              />
            ))}
          </section>
          <div className="stack xl:row-span-2">
            <SheetChain sheet={sheet} />
            <ForecastSection forecast={sheet.forecast} />
            <LedgerSection sheet={sheet} />
            <InspectionSection sheet={sheet} mayInspect={mayInspect} />
          </div>
          <Stack>
            <ForecastDetail
              forecast={sheet.forecast}
              assumptions={<SheetAssumptions sheet={sheet} mayAssume={mayAssume} />}
            />
          </Stack>
        </div>
        <ChassisSections
          chassis={sheet.chassis}
          road={<RoadAssumptions sheet={sheet} mayAssume={mayAssume} />}
        />
      </Page>
    </SheetProvider>
  );
}

function RoadAssumptions({ sheet, mayAssume }: Pick<BuildSheetProps, "sheet" | "mayAssume">) {
  const { chassis, assumptionChanges, site, id: buildId, revision } = sheet;
  if (chassis.acceleration.missing !== null) return null;
  return (
    <AssumptionList
      assumptions={chassis.acceleration.value.road}
      changes={assumptionChanges}
      timeZone={site.timeZone}
      {...(mayAssume ? { seen: { buildId, revision } } : {})}
    />
  );
}

function SheetAssumptions({ sheet, mayAssume }: Pick<BuildSheetProps, "sheet" | "mayAssume">) {
  const { forecast, assumptionChanges, site, id: buildId, revision } = sheet;
  if (forecast.kind !== "forecast") return null;
  return (
    <AssumptionList
      assumptions={forecast.assumptions}
      changes={assumptionChanges}
      timeZone={site.timeZone}
      {...(mayAssume ? { seen: { buildId, revision } } : {})}
    />
  );
}
