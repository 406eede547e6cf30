import type { BuildForecast, Forecasted } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";
import { CurveOverlay } from "@/design/plots/curve-overlay";
import { RuledTable } from "@/design/ruled-table";
import { Section } from "@/design/sheet";
import { forecastBands, forecastRuns } from "./forecast-runs";
import { bandText, rangeText } from "./forecast-words";

interface ForecastSectionProps {
  readonly forecast: BuildForecast;
  /** Larger on paper, where there is nothing beside it. */
  readonly size?: "full" | "medium";
}

/** What the build will make, over what the vehicle makes now: always with its band, and what limits it. */
export function ForecastSection({ forecast, size = "medium" }: ForecastSectionProps) {
  return (
    <Section title="Forecast" aside={<span className="fine">at the hubs, torque at engine speed</span>}>
      {forecast.kind === "forecast" ? (
        <>
          <Headline forecast={forecast} />
          <CurveOverlay
            caption={<span className="visually-hidden">Forecast over the baseline</span>}
            measuredAt={`at the hubs, ${forecast.reference}`}
            runs={forecastRuns(forecast)}
            bands={forecastBands(forecast)}
            size={size}
          />
          <Limits forecast={forecast} />
        </>
      ) : (
        <Without forecast={forecast} />
      )}
    </Section>
  );
}

function Without({ forecast }: { readonly forecast: Exclude<BuildForecast, Forecasted> }) {
  if (forecast.kind === "missing") return <p className="notice">{forecast.sentence}</p>;
  return (
    <p className="fine">
      {forecast.sentence} As it stands: {bandText(forecast.asItStands, "kW")}. {forecast.baseline.sentence}
    </p>
  );
}

function Headline({ forecast }: { readonly forecast: Forecasted }) {
  const { power, torque, hotDay, baseline, boost } = forecast;
  return (
    <div className="grid gap-1">
      <p className="forecast-headline">
        <strong>{rangeText(power, "kW")}</strong> <span aria-hidden="true">·</span>{" "}
        <strong>{rangeText(torque, "N·m")}</strong>
        {boost && (
          <>
            {" "}
            <span aria-hidden="true">·</span> boost to {figureText(boost.kPa)} kPa
          </>
        )}
      </p>
      <p>
        On a day of {hotDay.tempC} °C, the site’s hot day: {rangeText(hotDay.power, "kW")},{" "}
        {rangeText(hotDay.torque, "N·m")}.
      </p>
      <p className="fine">{baseline.sentence}</p>
    </div>
  );
}

const limitColumns = [
  { id: "where", title: "Limited by" },
  { id: "because", title: "Because" },
] as const;

function Limits({ forecast }: { readonly forecast: Forecasted }) {
  return (
    <div className="grid gap-2">
      <h3>What limits where</h3>
      <RuledTable
        caption="What limits where"
        isCaptionHidden
        columns={limitColumns}
        rows={forecast.limits.map(({ headline, because, fromRpm }) => ({
          id: String(fromRpm),
          cells: { where: `${headline.charAt(0).toUpperCase()}${headline.slice(1)}`, because },
        }))}
      />
      {forecast.gears.map((sentence) => (
        <p key={sentence} className="fine">
          {sentence}
        </p>
      ))}
      <p className="fine">
        The engine would ask {figureText(forecast.askedOfGearbox.torqueNm)} N·m of gearbox and clutch at{" "}
        {figureText(forecast.askedOfGearbox.speedRpm)} rpm if nothing held it; the rules judge this figure.
      </p>
    </div>
  );
}
