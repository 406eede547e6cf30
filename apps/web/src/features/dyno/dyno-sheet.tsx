import {
  type DynoKind,
  LARGEST_LOG_BYTES,
  type SetUpProposal,
  type VehicleFacts,
  type VehicleSession,
  type WatchedLimit,
} from "@buildproof/workshop";
import type { ReactNode } from "react";
import { EmptyState } from "@/design/empty-state";
import { Columns, Section, Stack } from "@/design/sheet";
import { type AskedView, dynoHref } from "./asked-view";
import { DynoCautions } from "./dyno-cautions";
import { ImportForm } from "./import-form";
import { LimitsSection } from "./limits-section";
import { SessionChoice } from "./session-choice";
import { SessionOverlay } from "./session-overlay";
import { SessionSection } from "./session-section";
import { ViewChoice } from "./view-choice";

interface DynoSheetProps {
  readonly path: string;
  readonly view: AskedView;
  readonly vehicle: VehicleFacts;
  /** Of the vehicle, oldest first. */
  readonly sessions: readonly VehicleSession[];
  /** What the page is about: drawn and listed unless the address names others. */
  readonly own: readonly VehicleSession[];
  readonly ifNone: string;
  readonly timeZone: string;
  readonly mayMeasure: boolean;
  readonly watched: readonly WatchedLimit[];
  readonly promise?: { readonly lowKw: number; readonly highKw: number } | null;
  /** Null where nothing may be imported here now. */
  readonly importing: Importing | null;
  /** What follows the curves. */
  readonly children?: ReactNode;
}

type Importing = {
  readonly title: string;
  readonly jobId?: string;
  readonly proposal: SetUpProposal;
  readonly kinds: readonly DynoKind[];
};

/** The body of every dyno page: curves, what follows from them, limits, runs, and the import. */
export function DynoSheet(props: DynoSheetProps) {
  const { path, view, sessions, own, timeZone, mayMeasure, importing, promise } = props;
  const chosen = sessions.filter(({ id }) => view.chosen.includes(id));
  const shown = chosen.length > 0 ? chosen : own;
  const listed = sessions.filter((each) => own.includes(each) || chosen.includes(each));
  const drawn = new Set(shown.map(({ id }) => id));
  return (
    <>
      <Columns>
        <Stack>
          <Section title="Power and torque" aside={<ViewChoice path={path} view={view} />}>
            {shown.length === 0 ? (
              <EmptyState sentence={props.ifNone} />
            ) : (
              <SessionOverlay
                sessions={shown}
                showsRuns={chosen.length === 1}
                figures={view.figures}
                timeZone={timeZone}
                {...(promise ? { promise } : {})}
              />
            )}
            <SessionChoice {...{ path, view, sessions, drawn, timeZone }} />
          </Section>
          {props.children}
          <LimitsSection session={shown.at(-1) ?? null} watched={props.watched} />
        </Stack>
        <Stack>
          {listed.length > 0 && (
            <Section title="Runs">
              {listed.toReversed().map((session) => (
                <SessionSection
                  key={session.id}
                  session={session}
                  timeZone={timeZone}
                  mayMeasure={mayMeasure}
                  runsHref={dynoHref(path, { ...view, chosen: [session.id] })}
                />
              ))}
            </Section>
          )}
        </Stack>
      </Columns>
      {importing && <ImportSection vehicleId={props.vehicle.id} {...importing} />}
    </>
  );
}

function ImportSection({ title, ...form }: Importing & { readonly vehicleId: string }) {
  return (
    <div className="no-print">
      <Section title={title} id="import">
        <DynoCautions />
        <ImportForm {...form} limitBytes={LARGEST_LOG_BYTES} />
      </Section>
    </div>
  );
}
