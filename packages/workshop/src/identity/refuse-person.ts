import { refusals } from "../core/result";

export const refusePerson = refusals({
  "person-not-found": () => "This person is not of your workshop. Go back to the list of people.",
  "email-taken": () => "Somebody signs in with that e-mail already. Use another address.",
  "name-taken": () =>
    "Somebody here has that name already. Add an initial, so that the plan can tell them apart.",
  "last-owner": () =>
    "This is the last active owner. Make somebody else owner first: a workshop without one could not be run.",
  "clock-running": (d: { name: string; job: number }) =>
    `${d.name} is clocked on to job ${d.job}. Stop that clock first.`,
});
