/** A stretch of time, half-open: its end is no longer in it. */
export type Span = readonly [from: number, to: number];

export type PlanResource = {
  readonly id: string;
  /** How many units there are at once, such as hoists of one kind. */
  readonly capacity: number;
  /** When it may be worked with; always when absent. */
  readonly open?: readonly Span[] | undefined;
};

/** The task may start `lag` after the end of the other, on the wall clock: cure, soak and cool-down run overnight too. */
export type Predecessor = { readonly task: string; readonly lag?: number | undefined };

export type PlanTask = {
  readonly id: string;
  /** Open time that it takes. */
  readonly duration: number;
  readonly uses?: Readonly<Record<string, number>> | undefined;
  readonly after?: readonly Predecessor[] | undefined;
  /** No earlier start, such as the day its parts are due. */
  readonly release?: number | undefined;
  readonly due?: number | undefined;
  /** What one unit of lateness costs. */
  readonly weight?: number | undefined;
  /** Whether it may pause while its resources are closed; it keeps them meanwhile. */
  readonly splittable?: boolean | undefined;
};

/** Units kept from the start of one task to the end of another, closed time included: a vehicle that is apart keeps its hoist. */
export type Hold = {
  readonly resource: string;
  readonly units?: number | undefined;
  readonly from: string;
  readonly to: string;
  /** Who works with the held units; `from`, `to` and all between them unless said. */
  readonly tasks?: readonly string[] | undefined;
};

export type Objective = "makespan" | "weighted-tardiness";

/** What is to be planned. Times are whole numbers of one unit, such as minutes. */
export type PlanModel = {
  readonly resources: readonly PlanResource[];
  readonly tasks: readonly PlanTask[];
  readonly holds?: readonly Hold[] | undefined;
  /** Tasks whose start is settled. */
  readonly fixed?: Readonly<Record<string, number>> | undefined;
  readonly objective?: Objective | undefined;
};
