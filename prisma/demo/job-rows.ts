import { commonPractice } from "./catalogue/types";
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
  });
  return {
    id,
    number,
    quote,
    steps: addSteps(workshop, id, quote, job.at),
    obligationIds: addObligations(workshop, id, quote, job.at),
  };
}

/** Access work comes off before the first operation that needs it and goes back after the last. */
function addSteps(workshop: DemoWorkshop, jobId: string, quote: DemoQuote, at: Date): Row<"jobStep">[] {
  const { rows, id: workshopId, newId } = workshop;
  const { operations, access } = quote.priced;
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

function addObligations(workshop: DemoWorkshop, jobId: string, quote: DemoQuote, at: Date): string[] {
  const { rows, id: workshopId, newId } = workshop;
  const codes = quote.priced.items.map(({ id }) => id);
  const isBoosted = codes.some((code) => code.startsWith("blower-"));
  const obligations = [
    ...(codes.includes("engineer-certificate") ? [certificate] : []),
    ...(isBoosted ? [readiness] : []),
  ];
  return obligations.map((obligation, position) => {
    const id = newId(at);
    rows.add("obligation", { id, workshopId, jobId, position, ...obligation });
    return id;
  });
}

const certificate = {
  code: "engineering-certificate",
  title: "Engineering certificate for the modification",
  because:
    "A change of this kind is certified by a licensed signatory before the vehicle is driven on the road. Confirm with the authority.",
  source: commonPractice,
  evidenceKind: "certificate",
  signatory: "licensed engineering signatory",
  safety: true,
  blocksHandOver: true,
};

const readiness = {
  code: "readiness-monitors",
  title: "Readiness monitors complete, no pending code",
  because: "A vehicle that leaves with monitors unset may hide a fault of its emission control.",
  source: commonPractice,
  evidenceKind: "record",
  signatory: "",
  safety: false,
  blocksHandOver: true,
};
