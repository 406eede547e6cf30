import { moneyWords } from "../jobs/gate-papers";
import type { QuoteMoney } from "../quotes/quote-money";
import type { JobRecords } from "./job-records";
import { holdsBack, type ObligationState } from "./obligation-states";

export type HandOverPoint = {
  readonly kind: "work" | "fault" | "obligation" | "money";
  readonly sentence: string;
  readonly safety: boolean;
};

/** Everything that stands between the vehicle and its owner, in the order in which it is dealt with. */
export function handOverPoints(
  records: JobRecords,
  obligations: readonly ObligationState[],
  money: QuoteMoney,
): readonly HandOverPoint[] {
  return [...workPoints(records, obligations), ...paperPoints(obligations), ...moneyPoints(money)];
}

/** What the floor still has to do: steps, hold points, faults. */
export function workPoints(
  { steps, openFaults }: JobRecords,
  obligations: readonly ObligationState[],
): readonly HandOverPoint[] {
  const said = new Set(obligations.map(({ code }) => code));
  const open = steps.filter(({ done }) => !done);
  const holds = open.filter(({ kind }) => kind === "holdPoint");
  const points: HandOverPoint[] = [];
  if (open.length > 0) {
    const sentence = `${open.length} of ${steps.length} steps of the job card are not done; next: ${open[0]?.operationName}, ${open[0]?.text}`;
    points.push({ kind: "work", sentence, safety: false });
  }
  if (!said.has("hold-points-signed")) {
    for (const { operationName, text } of holds)
      points.push({
        kind: "work",
        sentence: `Hold point not signed: ${operationName}, ${text}`,
        safety: true,
      });
  }
  for (const { sentence } of openFaults)
    points.push({ kind: "fault", sentence: `Fault not cleared: ${sentence}`, safety: false });
  return points;
}

function paperPoints(obligations: readonly ObligationState[]): readonly HandOverPoint[] {
  return obligations.filter(holdsBack).map(({ title, sentence, safety }) => ({
    kind: "obligation",
    sentence: `${title}. ${sentence}`,
    safety,
  }));
}

/** An incomplete list lets nothing pass: what holds a vehicle has to stand on it first. */
export function notLaidOutPoints(
  missing: readonly { readonly title: string; readonly blocksHandOver: boolean; readonly safety: boolean }[],
): readonly HandOverPoint[] {
  const holding = missing.filter(({ blocksHandOver }) => blocksHandOver);
  if (holding.length === 0) return [];
  const titles = holding.map(({ title }) => title).join("; ");
  const sentence = `Not on the list of obligations yet: ${titles}. Lay the obligations out on this page.`;
  return [{ kind: "obligation", sentence, safety: holding.some(({ safety }) => safety) }];
}

function moneyPoints(money: QuoteMoney): readonly HandOverPoint[] {
  if (money.outstandingMinor === 0n) return [];
  const outstanding = moneyWords(money.outstandingMinor, money.currency);
  const gross = moneyWords(money.grossMinor, money.currency);
  return [
    {
      kind: "money",
      safety: false,
      sentence: `Balance not paid: ${outstanding} of ${gross} is outstanding.`,
    },
  ];
}
