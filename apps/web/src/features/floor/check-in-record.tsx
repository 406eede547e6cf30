import { ButtonLink } from "@/design/button";
import { Moment } from "@/design/moment";
import { Section, SheetRow } from "@/design/sheet";
import { Photos } from "./photos";

interface CheckInRecordProps {
  readonly jobId: string;
  readonly timeZone: string;
  readonly record: {
    readonly at: Date;
    readonly by: string;
    readonly odometerKm: number;
    readonly keys: number;
    readonly fuelOctane: number | null;
    readonly ethanolPct: number | null;
    readonly condition: string;
    readonly photos: readonly string[];
    readonly told: readonly string[];
  };
}

/** How the vehicle came, as it was recorded; it is not changed afterwards. */
export function CheckInRecord({ jobId, timeZone, record }: CheckInRecordProps) {
  return (
    <Section title="Taken in">
      <SheetRow label="When">
        <Moment at={record.at} timeZone={timeZone} /> by {record.by}
      </SheetRow>
      <SheetRow label="Condition">
        {record.condition}
        <Photos addresses={record.photos} of="the vehicle as it came" />
      </SheetRow>
      <SheetRow label="Odometer">{record.odometerKm.toLocaleString("en-AU")} km</SheetRow>
      <SheetRow label="Keys">{record.keys}</SheetRow>
      <SheetRow label="Fuel">
        {record.fuelOctane === null ? "grade not asked" : `${record.fuelOctane} octane`}
        {record.ethanolPct !== null && `, ${record.ethanolPct} % ethanol`}
      </SheetRow>
      <SheetRow label="Said">
        <ul>
          {record.told.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </SheetRow>
      <p>
        <ButtonLink variant="primary" href={`/floor/jobs/${jobId}`}>
          Open the job card
        </ButtonLink>
      </p>
    </Section>
  );
}
