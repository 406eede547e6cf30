/** What happened last to a step that is not open. */
export type StepEntered = {
  readonly kind: "done" | "value" | "photo" | "signed";
  readonly value: number | null;
  readonly text: string;
  readonly withinLimits: boolean | null;
  readonly by: { readonly id: string; readonly name: string };
  readonly at: Date;
};

/** A step of a job card with the state that its entries give it. */
export type CardStep = {
  readonly id: string;
  readonly position: number;
  readonly operationCode: string;
  readonly operationName: string;
  readonly text: string;
  readonly kind: "tick" | "measurement" | "torque" | "photo" | "serial" | "holdPoint";
  readonly unit: string;
  readonly low: number | null;
  readonly target: number | null;
  readonly high: number | null;
  readonly cautions: readonly string[];
  readonly oneUsePart: string;
  /** For a hold point: second-person or signatory. */
  readonly signer: string;
  /** `outside`: entered, but outside its limits, so that it is a fault until it is entered again or cleared. */
  readonly state: "open" | "done" | "outside";
  readonly entered: StepEntered | null;
  /** Everybody who entered something here since it was last opened again. */
  readonly workedBy: readonly string[];
  /** Addresses of the photos taken since it was last opened again. */
  readonly photos: readonly string[];
};

/** The hold point that nothing at this position may cross yet; null where the way is free. */
export function holdBefore(steps: readonly CardStep[], position: number): CardStep | null {
  return (
    steps.find((step) => step.position < position && step.kind === "holdPoint" && step.state !== "done") ??
    null
  );
}

/** What a signature at this hold point answers for: the steps since the hold point before it. */
export function stepsHeldBy(steps: readonly CardStep[], hold: CardStep): readonly CardStep[] {
  const before = steps.filter(({ position }) => position < hold.position);
  const lastHold = before.findLastIndex(({ kind }) => kind === "holdPoint");
  return before.slice(lastHold + 1);
}

/** The signed hold points whose signature falls when a step before them is opened again. */
export function signaturesAfter(steps: readonly CardStep[], position: number): readonly CardStep[] {
  return steps.filter(
    (step) => step.position > position && step.kind === "holdPoint" && step.state === "done",
  );
}

/** The step that is next: the first that is open. */
export function nextOpen(steps: readonly CardStep[]): CardStep | null {
  return steps.find(({ state }) => state === "open") ?? null;
}
