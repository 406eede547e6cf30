import { refusals } from "../core/result";

export const refuse = refusals({
  "no-blocks": () => "Choose at least one hoist, technician or dyno and its time.",
  "times-not-right": (d: { points: readonly string[] }) =>
    d.points.length === 1
      ? `Not booked: ${d.points[0]}`
      : `Not booked: ${d.points.length} times need another look.`,
  "double-booked": (d: { sentence: string }) => d.sentence,
  "booking-past": () => "This time is over, so it stays as it was. Book new time on the job's page.",
  "dyno-left-alone": (d: { points: readonly string[] }) =>
    `That leaves the dyno without its operator: ${d.points.join(" ")} Move or cancel the dyno time first.`,
});
