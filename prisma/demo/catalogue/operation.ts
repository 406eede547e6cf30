import { photo } from "./step";
import type { Operation } from "./types";

type Short = Pick<Operation, "id" | "name" | "ownHours" | "access" | "steps"> & Partial<Operation>;

/** An operation of the usual kind: fitting on a hoist, by a mechanic, at the workshop's rate. */
export const onHoist = (short: Short): Operation => ({
  rate: "workshop",
  stage: "fitting",
  order: 60,
  skill: "mechanical",
  place: "hoist",
  ...short,
});

export const fitted = photo("fitted", "Photograph the work as fitted.");
