import type { Chassis } from "@buildproof/workshop";
import { Figure } from "@/design/figure";
import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";
import { FindingLines } from "./finding-lines";
import { PartSection } from "./part-section";

const shown = { id: "shown", title: "It shows" } as const;
const over = { id: "over", title: "Over", align: "figure" } as const;
const unchanged = [shown, { id: "after", title: "True speed", align: "figure" }, over] as const;
const changed = [
  shown,
  { id: "before", title: "True, standard", align: "figure" },
  { id: "after", title: "True, chosen", align: "figure" },
  over,
] as const;

/** What the speedometer shows against the true speed. */
export function SpeedometerSection({ speedometer }: Pick<Chassis, "speedometer">) {
  return (
    <PartSection title="Speedometer" part={speedometer}>
      {({ rows, finding, isChanged, standardOverPct }) => (
        <>
          <RuledTable
            caption="What the speedometer shows against the true speed"
            isCaptionHidden
            columns={isChanged ? changed : unchanged}
            rows={rows.map((row) => ({
              id: String(row.shownKmh),
              cells: {
                shown: (
                  <>
                    <Figure value={row.shownKmh} unit="km/h" />
                    <span className="sentence-note">{row.words}</span>
                  </>
                ),
                before: <Figure value={row.trueBeforeKmh} unit="km/h" decimals={1} />,
                after: <Figure value={row.trueAfterKmh} unit="km/h" decimals={1} />,
                over: <Figure value={row.errorPct} unit="%" decimals={1} signed />,
              },
            }))}
          />
          <FindingLines label="What UN R39 says of it" findings={[finding]} />
          <p className="fine">
            On the standard tyres this model shows {figureText(standardOverPct, 1)} % over the true speed. UN
            R39 allows none under it, and at most a tenth of it plus 4 km/h over.
          </p>
        </>
      )}
    </PartSection>
  );
}
