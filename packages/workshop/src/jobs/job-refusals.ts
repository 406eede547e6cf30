import { refusals } from "../core/result";
import { staleSentence } from "../core/revision";

type Points = { readonly points: readonly string[] };

export const refuse = refusals({
  "job-not-found": () => "There is no such job here. Open it again from the list of jobs.",
  "booking-not-found": () => "There is no such booking here. Open the plan again.",
  "job-stale": () => staleSentence("job"),
  "booking-stale": () =>
    "Somebody else moved or cancelled this booking a moment ago. The plan now shows where it stands; move it from there.",
  "job-cannot-move": (d: { from: string; to: string }) =>
    `A job that is ${d.from} cannot become ${d.to}. Look at what it still waits for on its page.`,
  "job-not-bookable": (d: { status: string }) =>
    `This job is ${d.status}, so no more time is booked for it. Open another job if there is more to do.`,
  "goods-missing-not-said": () => "Say what is missing, so that stores can chase it.",
  "goods-closed": (d: { status: string }) => `This job is ${d.status}: its parts are counted no more.`,
  "gate-shut": (d: Points) =>
    d.points.length === 1
      ? "Not booked: one point is not met. Resolve it, or have a manager override it where that is allowed."
      : `Not booked: ${d.points.length} points are not met. Resolve them, or have a manager override those where that is allowed.`,
  "override-needs-reason": (d: { title: string }) =>
    `Give the reason for overriding “${d.title}” in at least 10 characters; it is recorded with your name.`,
  "override-is-safety": (d: { title: string }) =>
    `“${d.title}” keeps people from harm and is never overridden. Resolve it first.`,
  "override-unknown": (d: { point: string }) =>
    `“${d.point}” is not an unmet point of this job any more. Open the gate again and repeat.`,
  "not-stopped": (d: { status: string }) =>
    `This job is ${d.status}, not stopped: there is nothing to take up again. Open it to see what it waits for.`,
  "resume-reason": () =>
    "Say in at least 10 characters what has changed, so that everybody knows why the job goes on.",
  "stop-reason": () => "Say why the job stops, so that the customer can be told.",
});
