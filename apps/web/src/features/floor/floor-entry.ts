/** What a device on the floor sends: one press of one person. */
export type FloorEntry = {
  /** Names this one press, so that it acts once however often it is sent. */
  readonly key: string;
  readonly use: "record-step" | "reopen-step" | "raise-fault" | "start-clock" | "stop-clock";
  readonly input: Readonly<Record<string, unknown>>;
  readonly photo?: File;
  /** Whose press it was: it is sent only while they are signed in. */
  readonly personId: string;
  readonly jobId: string;
  /** What it was, for the list of what has not gone yet. */
  readonly label: string;
  readonly madeAt: string;
  /** Why the workshop did not take it. */
  readonly refused?: string;
};

export type FloorRefusal = { readonly code: string; readonly sentence: string; readonly field?: string };

/** What the workshop answers to an entry. */
export type FloorAnswer =
  | { readonly ok: true; readonly value: Readonly<Record<string, unknown>>; readonly at: string }
  | { readonly ok: false; readonly refusal: FloorRefusal };
