import { refusals } from "../core/result";
import { staleSentence } from "../core/revision";

/** What is refused about the catalogue, in words. */
export const refuseCatalogue = refusals({
  "version-not-found": () =>
    "There is no such version of the catalogue in this workshop. Choose one from the list.",
  "version-published": (d: { number: number }) =>
    `Version ${d.number} is published and stays as it was. Start a new draft instead.`,
  "part-unchanged": () => "Nothing differs from the catalogue as it is. Change something, or leave the page.",
  "part-unknown": (d: { code: string }) => `The catalogue has no ${d.code}. Look for it in the list again.`,
  "part-not-found": (d: { code: string }) => `The catalogue has no ${d.code}. Look for it in the list again.`,
  "day-is-past": () => "Choose a day after today, or publish it now.",
  "not-scheduled": () => "This version does not wait for a day. Look at it again.",
  "no-such-build": (d: { number: number }) =>
    `There is no build ${d.number} in this workshop. Look for it under Builds.`,
  "sample-already": (d: { number: number }) => `Build ${d.number} is a sample already.`,
  "sample-not": (d: { number: number }) => `Build ${d.number} is not a sample any more.`,
  "document-empty": () => "The file has no content. Choose another one.",
  "document-too-large": () => "The file has more than 20 MB. Make it smaller or split it.",
  "document-kind": () =>
    "The file is neither a PDF nor a picture that can be shown. Save it as a PDF and attach that.",
  "document-there": () => "This file is attached to the item already.",
  "document-gone": () => "That document is gone already. Look at the item again.",
  "amount-wrong": () =>
    "Write the amount as a number with at most the decimals of the money, such as 1,940.00.",
  "component-unknown": () => "Choose what it is on the vehicle from the list.",
  "figures-wrong": (d: { points: readonly string[] }) => d.points.join(" "),
  "nothing-to-undo": (d: { number: number }) =>
    `Nothing differs from the catalogue of version ${d.number}. There is nothing to go back from.`,
  "code-taken": (d: { code: string }) => `The code ${d.code} is in use already. Choose another one.`,
  "change-not-found": () => "This draft does not change that any more. Look at the draft again.",
  "nothing-changed": () => "This draft changes nothing yet. Change something first, then publish it.",
  overtaken: (d: { points: readonly string[] }) =>
    `The catalogue has changed since this draft was written: ${d.points.join(", ")}. Look at each of them in the draft and keep or drop the change, then publish again.`,
  "points-nowhere": (d: { points: readonly string[] }) =>
    `Something in this draft points at what would not be there. ${d.points.join(" ")}`,
  "example-drafted": (d: { code: string }) =>
    `${d.code} is not sold yet, so that no build can have it. Publish the draft first, or look at the example here.`,
  "no-such-vehicle": (d: { model: string }) =>
    `No vehicle of the model ${d.model} is in the book. Add one first, then open the example again.`,
  "import-too-large": (d: { mostBytes: number }) =>
    `The files are larger than ${d.mostBytes / 1e6} MB together: split them and import the pieces.`,
  "import-has-problems": (d: { count: number }) =>
    `${d.count === 1 ? "One point is" : `${d.count} points are`} open in these files. Mend them and check again; nothing was imported.`,
  "import-changes-nothing": () =>
    "These files say what the catalogue says already, so there is nothing to draft.",
  "import-differs": () =>
    "The catalogue or the files have changed since they were checked. Check them again and look at what would change.",
  "package-not-found": () => "There is no such package. Choose one from the list.",
  "package-empty": () => "A package has at least one item. Choose what is always in it.",
  "package-choice-empty": () => "Each choice has a name and at least one item: fill it in, or take it out.",
  "model-unknown": () => "There is no such vehicle model. Choose one from the list.",
  "copy-there-already": (d: { package: string; model: string }) =>
    `${d.package} is made for the ${d.model} already. Choose another vehicle.`,
  "copy-does-not-fit": (d: { model: string; items: readonly string[] }) =>
    `These do not fit the ${d.model}: ${d.items.join(", ")}. Choose what takes their place, or leave them out.`,
  stale: () => staleSentence("draft"),
});
