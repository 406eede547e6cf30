import type { BuildForecast, Forecasted } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";
import { Chain } from "@/design/plots/chain";
import { CurveOverlay } from "@/design/plots/curve-overlay";
import { RuledTable } from "@/design/ruled-table";
import { Section } from "@/design/sheet";
import { forecastBands, forecastRuns } from "./forecast-runs";
import { bandText, rangeText } from "./forecast-words";
import { fuelChain } from "./fuel-chain";

interface ForecastSectionProps {
  readonly forecast: BuildForecast;
  /** Larger on paper, where there is nothing beside it. */
  readonly size?: "full" | "small";
  /** What it assumes, as the page shows it. */
  readonly assumptions?: React.ReactNode;
}

/** What the build will make, over what the vehicle makes now: always with its band, and what limits it. */
export function ForecastSection({ forecast, size = "small", assumptions }: ForecastSectionProps) {
  return (
    <Section title="Forecast" aside={<span className="fine">at the hubs, torque at engine speed</span>}>
      {forecast.kind === "forecast" ? (
        <>
          <Headline forecast={forecast} />
          <CurveOverlay
            caption="Forecast over the baseline"
            measuredAt={`at the hubs, ${forecast.reference}`}
            runs={forecastRuns(forecast)}
            bands={forecastBands(forecast)}
            size={size}
          />
          <Limits forecast={forecast} />
          <FuelHeadroom forecast={forecast} />
          {assumptions}
          <p className="fine">
            A forecast is no calibration: mixture, knock and temperatures are watched on the dyno by a
            licensed calibrator, within abort limits. Emission and road rules of the place apply.
          </p>
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

function FuelHeadroom({ forecast }: { readonly forecast: Forecasted }) {
  const { fuel } = forecast;
  const { demand } = fuel;
  return (
    <div className="grid gap-2">
      <h3>Fuel, stage by stage</h3>
      {fuelChain(fuel).map((path) => (
        <div key={path.id} className="grid gap-1">
          <p className="fuel-load">
            <strong>{path.title}.</strong>{" "}
            {path.id === "sweep" ? fuel.sweep.sentence : fuel.sustained.sentence}
          </p>
          <Chain caption={`Fuel asked against given: ${path.title}`} paths={[path]} />
        </div>
      ))}
      <p className="fine">
        At {figureText(demand.speedRpm)} rpm the engine burns{" "}
        {demand.fromAirKgPerH !== null && (
          <>{figureText(demand.fromAirKgPerH)} kg/h by its air and mixture, </>
        )}
        {figureText(demand.fromPowerKgPerH)} kg/h by its power at {figureText(demand.bsfcGPerKwh)} g/kWh.
      </p>
    </div>
  );
}
