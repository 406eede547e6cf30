import { completePrerequisites } from "@buildproof/prerequisites";
import { clingoSearch } from "@buildproof/prerequisites/solver";
import { madeQuestion, startSolver } from "@buildproof/prerequisites/testing";

/* A process of its own: starts the solver's worker, asks the largest question, and prints what that took. */
const heldMb = (): number => process.memoryUsage().rss / 1_000_000;

const before = heldMb();
const begun = performance.now();
await startSolver();
const startMs = Math.round(performance.now() - begun);
const startedMb = Math.round(heldMb() - before);
const large = madeQuestion(1, { items: 10_000, rules: 40_000, capacities: 20, groups: 500, chosen: 30 });
const withQuestion = heldMb();
await completePrerequisites(large, clingoSearch(5_000));
const largestMb = Math.round(heldMb() - withQuestion) + startedMb;
console.log(JSON.stringify({ startMs, startedMb, largestMb }));
process.exit(0);
