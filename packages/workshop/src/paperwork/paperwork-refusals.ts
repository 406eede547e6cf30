import { refusals } from "../core/result";
import { staleSentence } from "../core/revision";

type Points = { readonly points: readonly string[] };

export const refuse = refusals({
  "job-not-found": () => "There is no such job here. Open it again from the list of jobs.",
  "obligation-not-found": () => "There is no such obligation here. Open the hand-over page of the job again.",
  "file-not-found": () => "There is no such file here.",
  "file-empty": () => "The file is empty. Choose it again.",
  "file-too-large": (d: { megabytes: number }) =>
    `The file has ${d.megabytes} MB; at most 20 MB are taken. Scan it smaller or split it.`,
  "file-kind": () =>
    "This file is none that is taken here. Attach a PDF, or a photo as JPEG, PNG, WebP or HEIC.",
  "signatory-missing": () => "Say who signed the certificate.",
  "record-not-uploaded": () =>
    "This is met by the job's own record, not by a file. Finish the work on the job card, or agree the visit at the keys.",
  "already-handed-over": () => "This vehicle was handed over already; nothing more is recorded on it.",
  "not-handed-over": () => "The pack is made when the vehicle is handed over. Hand it over first.",
  "job-stale": () => staleSentence("job"),
  "work-not-done": (d: Points) =>
    `The work is not done: ${d.points.length === 1 ? "one thing is" : `${d.points.length} things are`} open.`,
  "hand-over-open": (d: Points) =>
    `Not handed over: ${d.points.length === 1 ? "one point is" : `${d.points.length} points are`} open.`,
  "odometer-back": (d: { lastKm: number }) =>
    `The odometer showed ${d.lastKm.toLocaleString("en-AU")} km before and cannot show less now. Read it again.`,
  "follow-up-missing": () =>
    "Agree the day of the re-torque visit while the customer is here; it is in the price.",
  "follow-up-past": () => "The follow-up visit is in the past. Choose a day from today on.",
  "keys-missing": (d: { taken: number }) =>
    `${d.taken} keys were taken in and fewer go back. Find the missing key, or say in the note where it is.`,
});
