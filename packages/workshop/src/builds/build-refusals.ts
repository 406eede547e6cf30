import { refusals } from "../core/result";
import { staleSentence } from "../core/revision";

const pickWords = {
  "at-most-one": "one at most",
  "exactly-one": "one",
  "at-least-one": "one or more",
} as const;

/** What is refused about builds, in words. */
export const refuseBuild = refusals({
  "build-not-found": () => "There is no such build in this workshop. Find it from the list of builds.",
  "vehicle-not-found": () => "There is no such vehicle in this workshop. Find it, or add it first.",
  "package-unknown": () => "There is no such package. Choose one from the list.",
  "package-does-not-fit": (d: { package: string; model: string }) =>
    `${d.package} is not made for the ${d.model}. Choose a package that is, or none.`,
  "package-choice-open": (d: { choice: string; pick: "at-most-one" | "exactly-one" | "at-least-one" }) =>
    `${d.choice}: choose ${pickWords[d.pick]} of what the package offers.`,
  "package-choice-unknown": (d: { package: string; item: string }) =>
    `${d.package} does not offer ${d.item} for this vehicle. Choose among what it offers, and add the rest on the build sheet.`,
  "wanted-by-past": (d: { today: string }) =>
    `The date it is wanted by has passed. Choose a day after ${d.today}, or leave it empty.`,
  "goal-empty": () => "Say at least one thing that is wanted: power, a trailer, a date or a price.",
  "goal-tow-too-heavy": (d: { model: string }) =>
    `The catalogue has no towing duty as heavy as that for the ${d.model}. Enter a lighter trailer, or ask the owner to add one.`,
  "item-unknown": (d: { code: string }) =>
    `There is no item ${d.code} in the catalogue. Choose one from the list.`,
  "item-does-not-fit": (d: { item: string; model: string }) =>
    `${d.item} does not fit the ${d.model}. Choose another item of this system.`,
  "item-excluded": (d: { item: string; because: string }) =>
    `${d.item} cannot be added to this build: ${d.because}`,
  "item-not-chosen": (d: { item: string }) =>
    `${d.item} is no longer on this build sheet. Look at the sheet again.`,
  stale: () => staleSentence("build sheet"),
  "odometer-back": (d: { known: number }) =>
    `The odometer read ${d.known} km before. Type the reading again; if it really is lower, correct it on the vehicle's page first.`,
});
