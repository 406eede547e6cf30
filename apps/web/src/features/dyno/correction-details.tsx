import type { CorrectionDetails, SessionView } from "@buildproof/workshop";
import { Disclosure } from "@/design/disclosure";
import { Figure } from "@/design/figure";
import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";

interface CorrectionProps {
  readonly session: SessionView;
  readonly title: string;
}

/** Where the factor came from, part by part, whether its code allows it, and what other codes would say. */
export function CorrectionSection({ session, title }: CorrectionProps) {
  const { correction } = session;
  return (
    <Disclosure
      title={
        <>
          How it is corrected<span className="visually-hidden">: {title}</span>
        </>
      }
    >
      {correction ? (
        <div className="dyno-details">
          <p>
            {session.code}: observed power and torque ×{" "}
            <span className="figure">{session.factor.toFixed(4)}</span>
          </p>
          <p className="figure">{correction.formula}</p>
          <p className="fine">p_d dry pressure in kPa, p barometer in kPa, t air in °C, T = t + 273.</p>
          <Parts session={session} correction={correction} />
          <Limits correction={correction} code={session.code} />
          {correction.warnings.length > 0 && (
            <ul className="dyno-remarks">
              {correction.warnings.map((warning) => (
                <li key={warning}>{warning}</li>
              ))}
            </ul>
          )}
          <OtherCodes correction={correction} />
        </div>
      ) : (
        <p>
          This session does not say how much fuel went into its correction, so its factor of{" "}
          {session.factor.toFixed(4)} cannot be worked out again. Import the log once more to have it.
        </p>
      )}
    </Disclosure>
  );
}

const partColumns = [
  { id: "part", title: "Air the engine breathed" },
  { id: "value", title: "", align: "figure" },
] as const;

function Parts({
  session,
  correction,
}: {
  readonly session: SessionView;
  readonly correction: CorrectionDetails;
}) {
  const { barometerKPa, airTempC, relativeHumidityPct } = session;
  const part = (id: string, value: number, unit: string, decimals: number) => ({
    id,
    cells: { part: id, value: <Figure value={value} unit={unit} decimals={decimals} /> },
  });
  return (
    <RuledTable
      caption="Air the engine breathed"
      isCaptionHidden
      columns={partColumns}
      rows={[
        part("Barometer in the cell", barometerKPa, "kPa", 2),
        part("Air at the inlet", airTempC, "°C", 1),
        part("Humidity", relativeHumidityPct, "%", 0),
        part("Vapour pressure of that air", correction.vapourPressureKPa, "kPa", 3),
        part("Dry pressure: barometer less vapour", correction.dryPressureKPa, "kPa", 3),
      ]}
    />
  );
}

const limitColumns = [
  { id: "name", title: "Allowed by the code" },
  { id: "range", title: "Range", align: "figure" },
  { id: "value", title: "Here", align: "figure" },
  { id: "within", title: "" },
] as const;

function Limits({ correction, code }: { readonly correction: CorrectionDetails; readonly code: string }) {
  if (correction.limits.length === 0) return <p>{code} sets no limits.</p>;
  return (
    <RuledTable
      caption={`What ${code} allows`}
      isCaptionHidden
      columns={limitColumns}
      rows={correction.limits.map(({ name, unit, decimals, value, low, high, isWithin }) => ({
        id: name,
        cells: {
          name,
          range: `${low} to ${high} ${unit}`,
          value: figureText(value, decimals),
          within: isWithin ? "within" : <strong>outside</strong>,
        },
      }))}
    />
  );
}

const otherColumns = [
  { id: "code", title: "The same runs by" },
  { id: "factor", title: "Factor", align: "figure" },
  { id: "peak", title: "Peak power", align: "figure" },
  { id: "remark", title: "" },
] as const;

function OtherCodes({ correction }: { readonly correction: CorrectionDetails }) {
  return (
    <>
      <RuledTable
        caption="The same runs by other codes"
        isCaptionHidden
        columns={otherColumns}
        rows={correction.others.map(({ code, factor, peakKw, isAllowed, isSuperseded }) => ({
          id: code,
          cells: {
            code,
            factor: factor.toFixed(4),
            peak: peakKw === null ? "–" : <Figure value={peakKw} unit="kW" decimals={1} />,
            remark: isSuperseded ? "superseded" : isAllowed ? "" : "not allowed in this air",
          },
        }))}
      />
      <p className="fine">
        Figures by different codes never compare; they stand here to show how far apart they are.
      </p>
    </>
  );
}
