import { speedometer } from "@buildproof/engineering";
import { type ChassisItem, finalDrivesOf, type Tyres } from "./chassis-build";
import { type ChassisFinding, oneDecimal } from "./finding";
import type { Driveline, TyreFigures } from "./stored-chassis";

/** The speeds at which the regulation tests (UN R39 paragraph 5.2, from memory). */
const SHOWN_KMH = [40, 80, 120] as const;

export type SpeedometerSheet = {
  readonly rows: readonly {
    readonly shownKmh: number;
    readonly trueBeforeKmh: number;
    readonly trueAfterKmh: number;
    readonly errorPct: number;
    readonly meets: boolean;
    readonly words: "within UN R39" | "reads low" | "reads too high";
  }[];
  readonly isChanged: boolean;
  readonly standardOverPct: number;
  /** What it is set to where it is recalibrated. */
  readonly setToOverPct: number | null;
  readonly finding: ChassisFinding;
};

/** What the speedometer shows against the true speed, before and after, by UN R39 paragraph 5.3. */
export function speedometerSheet(
  figures: TyreFigures,
  driveline: Driveline,
  items: readonly ChassisItem[],
  tyres: Tyres,
): SpeedometerSheet {
  const { speedometerOverPct: standardOverPct, speedTakenAt } = figures;
  const setToOverPct =
    items.findLast(({ chassis }) => chassis.tyre?.speedometerOverPct !== undefined)?.chassis.tyre
      ?.speedometerOverPct ?? null;
  const drives = finalDrivesOf(driveline, items);
  // Taken at the gearbox, a shorter final drive turns it faster at the same road speed.
  const driven = speedTakenAt === "gearbox" ? drives.fitted / drives.standard : 1;
  const after =
    setToOverPct === null
      ? {
          standardTyre: tyres.standard,
          fittedTyre: tyres.fitted,
          standardErrorPct: 100 * ((1 + standardOverPct / 100) * driven - 1),
        }
      : { standardTyre: tyres.fitted, fittedTyre: tyres.fitted, standardErrorPct: setToOverPct };
  const rows = SHOWN_KMH.map((shownKmh) => {
    const { trueKmh, errorPct, meetsUnR39 } = speedometer({ indicatedKmh: shownKmh, ...after });
    return {
      shownKmh,
      trueBeforeKmh: shownKmh / (1 + standardOverPct / 100),
      trueAfterKmh: trueKmh,
      errorPct,
      meets: meetsUnR39,
      words: wordsFor(meetsUnR39, errorPct),
    };
  });
  const isChanged = rows.some(
    ({ trueBeforeKmh, trueAfterKmh }) => Math.abs(trueAfterKmh - trueBeforeKmh) > 0.01,
  );
  return { rows, isChanged, standardOverPct, setToOverPct, finding: findingOf(rows, setToOverPct) };
}

function wordsFor(meets: boolean, errorPct: number): SpeedometerSheet["rows"][number]["words"] {
  if (meets) return "within UN R39";
  return errorPct < 0 ? "reads low" : "reads too high";
}

function findingOf(rows: SpeedometerSheet["rows"], setToOverPct: number | null): ChassisFinding {
  const outside = rows.filter(({ meets }) => !meets);
  const id = "speedometer";
  const [worst] = outside;
  if (worst) {
    const speeds = outside.map(({ shownKmh }) => shownKmh).join(", ");
    return {
      id,
      grade: "stop",
      sentence: `It ${worst.words} by ${oneDecimal(Math.abs(worst.errorPct))} % at ${speeds} km/h shown, which UN R39 does not allow: ${
        setToOverPct === null
          ? "add the speedometer recalibration"
          : "set it between the true speed and a tenth plus 4 km/h over"
      }, and check the vehicle at 40, 80 and 120 km/h.`,
    };
  }
  return {
    id,
    grade: "fit",
    sentence:
      setToOverPct === null
        ? "Within UN R39 at all three speeds. Worked out from tyre sizes and the error on the standard tyre: measure this vehicle's own."
        : `Recalibrated to show ${oneDecimal(setToOverPct)} % over the true speed, within UN R39: check the vehicle at all three speeds.`,
  };
}
