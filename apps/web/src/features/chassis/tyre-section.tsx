import type { Chassis, ChassisPart, GearingSheet, TyreLine, TyreSheet } from "@buildproof/workshop";
import type { ReactNode } from "react";
import { Figure } from "@/design/figure";
import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";
import { FindingLines } from "./finding-lines";
import { PartSection } from "./part-section";

type Row = {
  readonly id: string;
  readonly cells: { readonly what: ReactNode; readonly standard: ReactNode; readonly built: ReactNode };
};

/** Tyres and gearing, as standard and as chosen. */
export function TyreSection({ tyres, gearing }: Pick<Chassis, "tyres" | "gearing">) {
  return (
    <PartSection title="Tyres and gearing" part={tyres}>
      {(sheet) => (
        <>
          <RuledTable
            caption="Tyres and gearing, as standard and as chosen"
            isCaptionHidden
            columns={columnsFor(sheet.isChanged || isGearingChanged(gearing))}
            rows={[...tyreRows(sheet), ...gearingRows(gearing)]}
          />
          <p>
            {sheet.change} {gearing.missing === null ? gearing.value.sentence : gearing.missing}
          </p>
          <FindingLines label="What the tyres have to bear" findings={sheet.findings} />
        </>
      )}
    </PartSection>
  );
}

function isGearingChanged(gearing: ChassisPart<GearingSheet>): boolean {
  return gearing.missing === null && gearing.value.isChanged;
}

function columnsFor(isChanged: boolean) {
  const what = { id: "what", title: <span className="visually-hidden">Figure</span> };
  const standard = { id: "standard", title: "As standard", align: "figure" } as const;
  const built = { id: "built", title: "As chosen", align: "figure" } as const;
  return isChanged ? [what, standard, built] : [what, standard];
}

function tyreRows({ standard, fitted }: TyreSheet): readonly Row[] {
  const row = (id: string, what: string, of: (line: TyreLine) => ReactNode): Row => ({
    id,
    cells: { what, standard: of(standard), built: of(fitted) },
  });
  return [
    row("designation", "Designation", ({ designation }) => designation),
    row("diameter", "Design diameter", ({ overallDiameterMm }) => (
      <Figure value={overallDiameterMm} unit="mm" decimals={1} />
    )),
    row("load", "One tyre carries", ({ loadKg }) =>
      loadKg === null ? "not said" : <Figure value={loadKg} unit="kg" />,
    ),
    row("speed", "Good for", ({ speedKmh, speedSymbol }) =>
      speedKmh === null ? (
        "not said"
      ) : (
        <>
          {speedSymbol}, <Figure value={speedKmh} unit="km/h" />
        </>
      ),
    ),
  ];
}

function gearingRows(gearing: ChassisPart<GearingSheet>): readonly Row[] {
  if (gearing.missing !== null) return [];
  const { finalDrive, effectiveFinalDrive, gears, atKmh } = gearing.value;
  return [
    {
      id: "final-drive",
      cells: {
        what: "Final drive, as it acts",
        standard: figureText(finalDrive, 3),
        built: figureText(effectiveFinalDrive, 3),
      },
    },
    ...gears.map(({ gear, ratio, rpmBefore, rpmAfter }) => ({
      id: `gear-${gear}`,
      cells: {
        what: `Gear ${gear} (${figureText(ratio, 2)}) at ${atKmh} km/h`,
        standard: <Figure value={rpmBefore} unit="rpm" />,
        built: <Figure value={rpmAfter} unit="rpm" />,
      },
    })),
  ];
}
