import type { Chassis, TowingSheet } from "@buildproof/workshop";
import { Figure } from "@/design/figure";
import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";
import { FindingLines } from "./finding-lines";
import { PartSection } from "./part-section";

const allowed = [
  { id: "what", title: "Limit" },
  { id: "allowed", title: "Allowed", align: "figure" },
] as const;
const asked = [
  ...allowed,
  { id: "asked", title: "Asked", align: "figure" },
  { id: "left", title: "Left", align: "figure" },
] as const;

/** What may be towed with every seat taken, and what holds it. */
export function TowingSection({ towing }: Pick<Chassis, "towing">) {
  return (
    <PartSection title="Towing" aside="every seat taken" part={towing}>
      {(sheet) => (
        <>
          <RuledTable
            caption="Towing limits"
            isCaptionHidden
            columns={sheet.trailer ? asked : allowed}
            rows={sheet.limits.map(({ id, label, heldBy, allowedKg, askedKg, leftKg }) => ({
              id,
              cells: {
                what: (
                  <>
                    {label}
                    {heldBy !== "" && <span className="sentence-note">{heldBy}</span>}
                  </>
                ),
                allowed: <Figure value={allowedKg} unit="kg" />,
                asked: askedKg !== null && <Figure value={askedKg} unit="kg" />,
                left: leftKg !== null && <Figure value={leftKg} unit="kg" />,
              },
            }))}
          />
          <FindingLines label="Limits of towing" findings={sheet.findings} />
          <p className="fine">{trailerWords(sheet)}</p>
        </>
      )}
    </PartSection>
  );
}

function trailerWords({ trailer, unbrakedTowKg }: TowingSheet): string {
  const unbraked = `Without trailer brakes at most ${figureText(unbrakedTowKg)} kg.`;
  if (!trailer) return unbraked;
  const ball = trailer.isBallAssumed
    ? `a tenth of it taken to rest on the ball (common practice, no source)`
    : `${figureText(trailer.ballKg)} kg of it on the ball`;
  return `A trailer of ${figureText(trailer.trailerKg)} kg whole, ${ball}: ${figureText(trailer.onWheelsKg)} kg on its own wheels, which the rules on trailer brakes go by. ${unbraked}`;
}
