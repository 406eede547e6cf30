import type { VehicleSession } from "@buildproof/workshop";
import { Button } from "@/design/button";
import { Checkbox } from "@/design/checkbox";
import { Disclosure } from "@/design/disclosure";
import { figureText } from "@/design/figure-text";
import type { AskedView } from "./asked-view";
import { sessionTitle } from "./session-words";

interface SessionChoiceProps {
  readonly path: string;
  readonly view: AskedView;
  /** Newest last. */
  readonly sessions: readonly VehicleSession[];
  readonly drawn: ReadonlySet<string>;
  readonly timeZone: string;
}

/** Any sessions of the vehicle over one another, of other jobs too. It is the address that says which, so a view can be sent on. */
export function SessionChoice({ path, view, sessions, drawn, timeZone }: SessionChoiceProps) {
  if (sessions.length < 2) return null;
  return (
    <div className="no-print">
      <Disclosure title="Choose what is drawn">
        <form
          key={[...drawn].join()}
          className="dyno-choice"
          action={path}
          method="get"
          aria-label="Choose what is drawn"
        >
          {view.figures === "observed" && <input type="hidden" name="figures" value="observed" readOnly />}
          {sessions.toReversed().map((session) => (
            <Checkbox
              key={session.id}
              name="session"
              value={session.id}
              label={sessionTitle(session, timeZone)}
              note={noteOf(session)}
              defaultSelected={drawn.has(session.id)}
            />
          ))}
          <div className="form-actions">
            <Button type="submit">Draw these</Button>
            <span className="fine">One alone shows its runs one by one.</span>
          </div>
        </form>
      </Disclosure>
    </div>
  );
}

function noteOf({ jobNumber, figures, note }: VehicleSession): string {
  const peak = figures.peakPower ? `${figureText(figures.peakPower.value)} kW` : "no run counts";
  const job = jobNumber === null ? "for no job" : `job ${jobNumber}`;
  return [peak, job, note].filter((part) => part !== "").join(", ");
}
