import type { MadeLogOrder } from "./make-dyno-log";

/** The made logs that are shipped as files, to be imported by hand or by a test. */
export const demoLogs: Readonly<Record<string, MadeLogOrder>> = {
  "ridgewold-baseline.csv": { seed: 5701, model: "ridgewold-57", kind: "baseline" },
  "ridgewold-proof.csv": { seed: 5702, model: "ridgewold-57", kind: "proof" },
};
