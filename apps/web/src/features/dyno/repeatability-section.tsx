import type { SessionView } from "@buildproof/workshop";
import { Disclosure } from "@/design/disclosure";
import { Figure } from "@/design/figure";
import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";

interface RepeatabilityProps {
  readonly session: SessionView;
  readonly title: string;
}

const columns = [
  { id: "run", title: "Run" },
  { id: "peak", title: "Peak", align: "figure" },
  { id: "mean", title: "Mean of the band", align: "figure" },
  { id: "off", title: "Off the others", align: "figure" },
  { id: "air", title: "Intake air", align: "figure" },
] as const;

/** How well the runs that count agree: spread of peak and of mean, the trend, and which of them stands apart. */
export function RepeatabilitySection({ session: { repeatability }, title }: RepeatabilityProps) {
  const { runs, band, peakSpreadPct, meanSpreadPct, limitPct, heatSoak } = repeatability;
  if (runs.length < 2 || !band) return null;
  const outliers = runs.flatMap(({ number, outlier }) => (outlier ? [`Run ${number} is ${outlier}`] : []));
  return (
    <Disclosure
      title={
        <>
          How well the runs agree<span className="visually-hidden">: {title}</span>
        </>
      }
    >
      <div className="dyno-details">
        <RuledTable
          caption="Runs beside one another"
          isCaptionHidden
          columns={columns}
          rows={runs.map(({ number, peakKw, meanKw, offOthersPct, intakeTempC }) => ({
            id: String(number),
            cells: {
              run: figureText(number),
              peak: <Figure value={peakKw} unit="kW" decimals={1} />,
              mean: <Figure value={meanKw} unit="kW" decimals={1} />,
              off: `${figureText(offOthersPct, 1, true)} %`,
              air: intakeTempC === null ? "–" : <Figure value={intakeTempC} unit="°C" decimals={1} />,
            },
          }))}
          total={{
            run: "Spread",
            peak: `${figureText(peakSpreadPct, 1)} %`,
            mean: `${figureText(meanSpreadPct, 1)} %`,
            off: "",
            air: "",
          }}
        />
        <p className="fine">
          The band is {figureText(band.fromRpm)} to {figureText(band.toRpm)} rpm, which every run covers; both
          spreads may be {figureText(limitPct)} % at the most.
        </p>
        <ul className="dyno-remarks">
          {[...outliers, ...(outliers.length === 0 && runs.length > 2 ? ["No run stands apart."] : [])].map(
            (sentence) => (
              <li key={sentence}>{sentence}</li>
            ),
          )}
          {heatSoak && <li>{heatSoak}</li>}
        </ul>
      </div>
    </Disclosure>
  );
}
