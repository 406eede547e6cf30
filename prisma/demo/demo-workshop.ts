import type { Jurisdiction } from "@buildproof/pricing";
import type { CurrencyCode } from "@buildproof/units";
import { type DemoRows, demoRows } from "./demo-rows";
import { type LocalTime, localTime } from "./local-time";
import type { SeededRandom } from "./seeded-random";
import { timeOrderedId } from "./time-ordered-id";

/** Where a workshop is and what an hour of it costs. */
export type DemoSite = {
  readonly name: string;
  readonly siteName: string;
  readonly timeZone: string;
  readonly currency: CurrencyCode;
  readonly jurisdiction: Jurisdiction;
  readonly taxNumber: string;
  readonly address: string;
  readonly phone: string;
  readonly email: string;
  readonly designAmbientC: number;
  readonly altitudeM: number;
  readonly labourRateMinorPerHour: number;
  readonly labourCostMinorPerHour: number;
  readonly dynoRateMinorPerHour: number;
  readonly dynoCostMinorPerHour: number;
  readonly quoteValidDays: number;
  readonly depositSharePct: number;
};

type Series = "build" | "quote" | "job";

/** One workshop being filled: where its rows go, and what they draw on. */
export type DemoWorkshop = {
  readonly id: string;
  readonly site: DemoSite;
  readonly rows: DemoRows;
  readonly random: SeededRandom;
  readonly local: LocalTime;
  readonly anchor: Date;
  readonly newId: (at: Date) => string;
  readonly nextNumber: (series: Series) => number;
  /** Where the counters stand once everything is added. */
  readonly counters: () => Readonly<Record<Series, number>>;
  /** Another source of chance for the same rows, so that one part never shifts another. */
  readonly withRandom: (label: string) => DemoWorkshop;
};

const FIRST_NUMBER = 1001;

export function demoWorkshop(site: DemoSite, anchor: Date, random: SeededRandom): DemoWorkshop {
  const rows = demoRows();
  const opened = new Date(anchor.getTime() - 800 * 86_400_000);
  const next: Record<Series, number> = { build: FIRST_NUMBER, quote: FIRST_NUMBER, job: FIRST_NUMBER };
  const id = timeOrderedId(opened, random);
  const local = localTime(site.timeZone);
  const drawingOn = (source: SeededRandom): DemoWorkshop => ({
    id,
    site,
    rows,
    random: source,
    local,
    anchor,
    newId: (at) => timeOrderedId(at, source),
    nextNumber: (series) => {
      next[series] += 1;
      return next[series] - 1;
    },
    counters: () => next,
    withRandom: (label) => drawingOn(source.fork(label)),
  });
  return drawingOn(random);
}
