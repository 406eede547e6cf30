import { obligationsFor, traitsOfItem } from "@buildproof/compliance";
import { plainStep } from "./catalogue-rows";
import type { Row } from "./demo-rows";
import type { DemoWorkshop } from "./demo-workshop";
import type { DemoQuote } from "./quote-rows";

export type DemoJob = {
  readonly id: string;
  readonly number: number;
  readonly quote: DemoQuote;
  readonly steps: readonly Row<"jobStep">[];
  readonly obligationIds: readonly string[];
};

/** The job of an accepted version, with its card and what must be met before the keys go back. */
export function addJob(
  workshop: DemoWorkshop,
  quote: DemoQuote,
  job: {
    readonly status: NonNullable<Row<"job">["status"]>;
    readonly at: Date;
    readonly startedAt?: Date | undefined;
    readonly finishedAt?: Date | undefined;
    /** Where it was stopped, when and why. */
    readonly stopped?: { readonly at: Date; readonly because: string } | undefined;
  },
): DemoJob {
  const { rows, id: workshopId, newId, nextNumber } = workshop;
  const id = newId(job.at);
  const number = nextNumber("job");
  const { build } = quote;
  rows.add("job", {
    id,
    workshopId,
    number,
    quoteId: quote.id,
    versionId: quote.versionId,
    buildId: build.id,
    customerId: build.vehicle.customer.id,
    vehicleId: build.vehicle.id,
    packageCode: build.packageCode,
    status: job.status,
    createdAt: job.at,
    startedAt: job.startedAt ?? null,
    finishedAt: job.finishedAt ?? null,
    stoppedAt: job.stopped?.at ?? null,
    stoppedBecause: job.stopped?.because ?? "",
  });
  const steps = addSteps(workshop, id, quote, job.at);
  return {
    id,
    number,
    quote,
    steps,
    obligationIds: addObligations(workshop, { id, quote, at: job.at }, steps),
  };
}

/**
 * Access work comes off before the first operation that needs it and goes back after the last. An inspection
 * that the build has on record already is not asked for again.
 */
function addSteps(workshop: DemoWorkshop, jobId: string, quote: DemoQuote, at: Date): Row<"jobStep">[] {
  const { rows, id: workshopId, newId } = workshop;
  const { access } = quote.priced;
  const isInspected = rows.of("inspection").some(({ buildId }) => buildId === quote.build.id);
  const operations = quote.priced.operations.filter(({ stage }) => !isInspected || stage !== "inspection");
  const needed = (code: string) => withNeeds(code, access);
  const open = new Set<string>();
  const added: Row<"jobStep">[] = [];
  const add = (
    operationCode: string,
    operationName: string,
    steps: readonly Parameters<typeof plainStep>[0][],
  ) => {
    for (const step of steps) {
      added.push(
        rows.add("jobStep", {
          id: newId(at),
          workshopId,
          jobId,
          position: added.length,
          operationCode,
          operationName,
          ...plainStep(step),
        }),
      );
    }
  };
  operations.forEach((operation, index) => {
    const wanted = new Set(operation.access.flatMap(needed));
    for (const piece of access) {
      if (!wanted.has(piece.id) || open.has(piece.id)) continue;
      open.add(piece.id);
      add(piece.id, piece.name, piece.out);
    }
    add(operation.id, operation.name, operation.steps);
    const later = new Set(operations.slice(index + 1).flatMap((each) => each.access.flatMap(needed)));
    for (const piece of [...access].reverse()) {
      if (!open.has(piece.id) || later.has(piece.id)) continue;
      open.delete(piece.id);
      add(piece.id, piece.name, piece.back);
    }
  });
  return added;
}

function withNeeds(code: string, access: DemoQuote["priced"]["access"]): readonly string[] {
  const needs = access.find(({ id }) => id === code)?.needs ?? [];
  return [...needs.flatMap((need) => withNeeds(need, access)), code];
}

/** What promises, safety and law ask of the job, by the rules that the workshop itself lays out. */
function addObligations(
  { rows, id: workshopId, newId, site }: DemoWorkshop,
  job: { readonly id: string; readonly quote: DemoQuote; readonly at: Date },
  steps: readonly Row<"jobStep">[],
): string[] {
  const { items, operations } = job.quote.priced;
  const traits = new Set(items.flatMap((item) => traitsOfItem({ ...item, code: item.id })));
  if (operations.some(({ stage }) => stage === "proof")) traits.add("power-promised");
  if (steps.some(({ kind }) => kind === "torque")) traits.add("torque-steps");
  if (steps.some(({ kind }) => kind === "holdPoint")) traits.add("hold-points");
  return obligationsFor(site.jurisdiction.slice(0, 2), traits).map(
    ({ basis: _, ...obligation }, position) => {
      const id = newId(job.at);
      rows.add("obligation", { id, workshopId, jobId: job.id, position, ...obligation });
      return id;
    },
  );
}
