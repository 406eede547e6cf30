import type { AccelerationSheet, Chassis } from "@buildproof/workshop";
import type { ReactNode } from "react";
import { figureText } from "@/design/figure-text";
import { RuledTable } from "@/design/ruled-table";
import { More } from "./more";
import { PartSection } from "./part-section";

type Row = AccelerationSheet["rows"][number];

const before = [
  { id: "what", title: "From rest, full throttle" },
  { id: "before", title: "As it stands", align: "figure" },
] as const;
const beforeAndAfter = [
  ...before,
  { id: "after", title: "As chosen", align: "figure" },
  { id: "difference", title: "Difference", align: "figure" },
] as const;

interface AccelerationSectionProps extends Pick<Chassis, "acceleration"> {
  readonly isPrinted: boolean;
  /** The road that is assumed, to be changed where that may be. */
  readonly road?: ReactNode;
}

/** How it goes before and after, always as a band, for closed courses only. */
export function AccelerationSection({ acceleration, isPrinted, road }: AccelerationSectionProps) {
  return (
    <PartSection title="Acceleration" aside="closed course only" part={acceleration}>
      {({ rows, isChanged, rollOut, massBeforeKg, massAfterKg, assumptions }) => (
        <>
          <RuledTable
            caption="Acceleration, expected and from low to high"
            isCaptionHidden
            columns={isChanged ? beforeAndAfter : before}
            rows={rows.map((row) => ({
              id: row.id,
              cells: {
                what: row.label,
                before: <Banded band={row.before} />,
                after: <Banded band={row.after} />,
                difference: <Banded band={row.difference} signed />,
              },
            }))}
          />
          <p>
            {isChanged
              ? `With ${kilograms(massAfterKg)} instead of ${kilograms(massBeforeKg)}, driver included.`
              : `With ${kilograms(massBeforeKg)}, driver included.${massAfterKg === massBeforeKg ? "" : " What is chosen changes it by less than a tenth of a second."}`}{" "}
            {rollOut &&
              `A drag strip starts its clock one foot (0.3048 m) later: take ${seconds(isChanged ? rollOut.afterS : rollOut.beforeS)} off to compare.`}
          </p>
          <More title="What these times rest on" isPrinted={isPrinted}>
            <ul className="chassis-remarks">
              {assumptions.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
            {road}
          </More>
        </>
      )}
    </PartSection>
  );
}

interface BandedProps {
  readonly band: Row["before"];
  readonly signed?: boolean;
}

/** The expected figure, and under it the band it may lie in. */
function Banded({ band, signed = false }: BandedProps) {
  if (!band) return <>not reached</>;
  const { low, expected, high } = band;
  const range = `${figureText(low, 1, signed)} to ${figureText(high, 1, signed)}`;
  return (
    <>
      <strong>{figureText(expected, 1, signed)}</strong>
      <span className="figure-unit">s</span>
      <span className="sentence-note">{range}</span>
    </>
  );
}

function kilograms(kg: number): string {
  return `${figureText(kg)} kg`;
}

function seconds(s: number): string {
  return `${figureText(s, 1)} s`;
}
