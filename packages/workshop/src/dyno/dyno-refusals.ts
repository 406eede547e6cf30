import { refusals } from "../core/result";

/** What the dyno's use cases refuse, each in one sentence that says what to do next. */
export const refuse = refusals({
  "vehicle-not-found": () =>
    "This vehicle is not in the workshop's records. Find it again and open it from there.",
  "job-not-found": () => "This job is not in the workshop's records. Find it again and open it from there.",
  "run-not-found": () => "This run is not in the workshop's records. Open the dyno page again.",
  "skill-missing": () =>
    "This needs the skill dyno operator. Ask somebody who has it, or ask the owner to record it with you.",
  "job-missing": () => "A step or a proof belongs to a job. Open the job's dyno page and import it there.",
  "job-not-here": (d: { status: string }) =>
    `This job is ${d.status}. Before check-in only a baseline is measured for it, and after hand-over nothing: look at where the job stands.`,
  "air-impossible": (d: { sentence: string }) => d.sentence,
  "gear-not-near-one": (d: { ratio: number }) =>
    `A gear of ${d.ratio} is not near 1:1: say that it was another gear, or hold the one nearest 1:1 and run again.`,
  "another-ratio": (d: { sentence: string }) => d.sentence,
  "log-refused": (d: { sentence: string; row?: number | undefined; column?: string | undefined }) =>
    d.sentence,
  "run-refused": (d: { run: string; sentence: string }) => `Run ${d.run}: ${d.sentence}`,
  "already-imported": (d: { kind: string; on: string }) =>
    `This very file is already kept as the ${d.kind} of ${d.on}. Nothing was added; choose another file.`,
  "already-excluded": () => "This run is already excluded. Open the page again to see why.",
  "not-excluded": () => "This run is counted already. Open the page again to see it.",
  "past-a-limit": (d: { because: string }) =>
    `This run went past an abort limit, so it is never counted (${d.because}) Run again within the limits.`,
  "run-void": (d: { because: string }) =>
    `This run is void, so it is never counted (${d.because}) Run again in one gear, with the converter locked.`,
  "verdict-stands": () =>
    "The verdict on these runs is released, so they stay as they are. Import new runs to measure again.",
  "no-promise": () => "The accepted version promises no power, so there is no verdict to release.",
  "baseline-missing": () =>
    "There is no baseline of this vehicle to compare with. Import the baseline first.",
  "proof-missing": () => "There is no proof of this job yet. Import the proof runs first.",
  "codes-differ": (d: { baseline: string; proof: string }) =>
    `The baseline is corrected to ${d.baseline} and the proof to ${d.proof}. Import one of them again under the other's code, so that like is compared with like.`,
  "verdict-changed": (d: { sentence: string }) =>
    `Something changed since you read it. The verdict is now: ${d.sentence} Read it again, then release it.`,
  "verdict-released": () =>
    "This verdict is already released on these runs. Import new runs to measure again.",
  "nothing-to-certify": () =>
    "No run of this proof counts, so there is nothing to certify. Import new runs and release their verdict.",
  "verdict-not-released": () => "The certificate follows the verdict. Release the verdict first.",
});
