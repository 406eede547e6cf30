import { type CardStep, enteredWords, limitWords, type readCard, type UseCase } from "@buildproof/workshop";
import { momentText } from "@/design/moment-text";

type Card = typeof readCard extends UseCase<infer _Schema, infer Value> ? Value : never;

/** A step as the card shows it: plain words and figures, ready for the browser. */
export type StepView = {
  readonly id: string;
  readonly operation: string;
  readonly text: string;
  readonly kind: CardStep["kind"];
  readonly unit: string;
  readonly low: number | null;
  readonly high: number | null;
  readonly target: number | null;
  /** "23 to 27 N·m"; empty where there is nothing to measure. */
  readonly limits: string;
  readonly cautions: readonly string[];
  readonly oneUsePart: string;
  readonly isForSignatory: boolean;
  readonly state: CardStep["state"];
  /** "24 N·m", "done", "signed"; empty while open. */
  readonly words: string;
  readonly by: string;
  readonly at: string;
  readonly note: string;
  readonly photos: readonly string[];
};

export type FaultView = {
  readonly id: string;
  readonly sentence: string;
  readonly raised: string;
  readonly photo: string | null;
  /** How it was settled; null while it is open. */
  readonly settled: string | null;
};

export type CardView = ReturnType<typeof cardView>;

/** The card in the words of the workshop's own clock. */
export function cardView(card: Card) {
  const { timeZone } = card;
  const when = (at: Date) => momentText(at, timeZone);
  return {
    jobId: card.id,
    number: card.number,
    plate: card.plate,
    vin: card.vin,
    model: card.model,
    customer: card.customer,
    packageName: card.packageName,
    odometerKm: card.odometerKm,
    status: card.status,
    statusWords: card.statusWords,
    stands: card.stands,
    inspection: card.inspection,
    isHere: card.isHere,
    mayWrite: card.mayWrite,
    isManager: card.isManager,
    timeZone,
    readAt: card.readAt.toISOString(),
    reader: card.reader,
    signers: card.signers,
    clock: card.clock && {
      jobId: card.clock.jobId,
      number: card.clock.number,
      since: when(card.clock.startedAt),
      operation: card.clock.operationName,
    },
    steps: card.steps.map((step) => stepView(step, when)),
    faults: card.faults.map(
      (fault): FaultView => ({
        id: fault.id,
        sentence: fault.sentence,
        raised: `${fault.by}, ${when(fault.raisedAt)}`,
        photo: fault.photoSha256,
        settled: fault.clearedAt ? `${fault.clearedBecause} ${when(fault.clearedAt)}` : null,
      }),
    ),
  };
}

function stepView(step: CardStep, when: (at: Date) => string): StepView {
  const { id, text, kind, unit, low, high, target, cautions, oneUsePart, state, entered, photos } = step;
  return {
    id,
    operation: step.operationName,
    text,
    kind,
    unit,
    low,
    high,
    target,
    limits: kind === "measurement" || kind === "torque" ? limitWords(step) : "",
    cautions,
    oneUsePart,
    isForSignatory: step.signer === "signatory",
    state,
    words: entered ? enteredWords(step, entered) : "",
    by: entered?.by.name ?? "",
    at: entered ? when(entered.at) : "",
    note: entered && kind !== "serial" ? entered.text : "",
    photos,
  };
}
