import type { ForecastRecord } from "@buildproof/workshop";
import { Moment } from "@/design/moment";
import { Section, SheetRow } from "@/design/sheet";
import { assumedText, bandText, rangeText } from "./forecast-words";

interface ForecastOnRecordProps {
  readonly forecast: ForecastRecord | null;
  readonly timeZone: string;
}

/** The forecast a version of a quote rested on when it was made, with what was assumed otherwise than usual. */
export function ForecastOnRecord({ forecast, timeZone }: ForecastOnRecordProps) {
  if (!forecast) return null;
  const { powerKw, torqueNm, hotDay, changed } = forecast;
  return (
    <Section
      title="The forecast it rests on"
      aside={<span className="fine">for the workshop; the customer is shown the promise</span>}
    >
      <div>
        <SheetRow label="Power">
          {bandText(powerKw, "kW")} at the hubs, {forecast.reference}
        </SheetRow>
        <SheetRow label="Torque">{bandText(torqueNm, "N·m")}, at engine speed</SheetRow>
        <SheetRow label={`At ${hotDay.tempC} °C`}>
          {rangeText(hotDay.powerKw, "kW")}, {rangeText(hotDay.torqueNm, "N·m")}
        </SheetRow>
        <SheetRow label="Limited by">{forecast.limits.join("; ")}</SheetRow>
        <SheetRow label="Fuel">
          Sweep: {forecast.fuel.sweep} Held load: {forecast.fuel.sustained}
        </SheetRow>
        <SheetRow label="From">{forecast.baseline}</SheetRow>
        <SheetRow label="Assumed">
          {changed.length === 0 ? (
            "Every figure is the usual one."
          ) : (
            <ul className="grid gap-1">
              {changed.map(({ name, label, unit, used, usual, reason, by, at }) => (
                <li key={name}>
                  {label}: {assumedText(used, unit)} where {assumedText(usual, unit)} is usual
                  <span className="sentence-note">
                    “{reason}” {by}, <Moment at={new Date(at)} timeZone={timeZone} />
                  </span>
                </li>
              ))}
            </ul>
          )}
        </SheetRow>
      </div>
    </Section>
  );
}
