import type { BuildForecast, ForecastFuel } from "@buildproof/workshop";
import type { ReactNode } from "react";
import { figureText } from "@/design/figure-text";
import { Chain } from "@/design/plots/chain";
import { Section } from "@/design/sheet";
import { fuelChain } from "./fuel-chain";

interface ForecastDetailProps {
  readonly forecast: BuildForecast;
  /** What it assumes, as the page shows it. */
  readonly assumptions: ReactNode;
}

/** What stands behind a forecast: the fuel stage by stage, and what is assumed. Nothing where there is none. */
export function ForecastDetail({ forecast, assumptions }: ForecastDetailProps) {
  if (forecast.kind !== "forecast") return null;
  return (
    <>
      <FuelSection fuel={forecast.fuel} />
      <Section title="What the forecast assumes">
        {assumptions}
        <p className="fine">
          A forecast is no calibration: mixture, knock and temperatures are watched on the dyno by a licensed
          calibrator, within abort limits. Emission and road rules of the place apply.
        </p>
      </Section>
    </>
  );
}

function FuelSection({ fuel }: { readonly fuel: ForecastFuel }) {
  const { demand } = fuel;
  return (
    <Section title="Fuel, stage by stage" aside={<span className="fine">asked against given</span>}>
      {fuelChain(fuel).map((path) => (
        <div key={path.id} className="fuel-load grid gap-2">
          <p>
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
    </Section>
  );
}
