import { refusals } from "../core/result";
import { staleSentence } from "../core/revision";

/** What the stage of quoting refuses, each with what to do next. */
export const refuse = refusals({
  "build-not-found": () => "There is no such build in this workshop. Open it again from the list of builds.",
  "quote-not-found": () => "There is no such quote in this workshop. Open it again from the list of quotes.",
  "version-not-found": () => "There is no such version in this workshop. Open the quote again.",
  "payment-not-found": () => "There is no such payment in this workshop. Open the quote again.",
  "line-not-found": () => "That line is no longer on this version. Open the quote again.",
  "link-not-found": () => "There is no such link in this workshop. Open the quote again.",
  "build-empty": () => "Nothing is chosen on this build yet. Choose at least one item, then quote it.",
  stale: (d: { by: string; points: readonly string[] }) =>
    d.by
      ? `${d.by} changed this version while you had it open. What you typed is still here: compare it with what stands there now, then save again.`
      : staleSentence("version"),
  "not-a-draft": (d: { versionNo: number; status: string }) =>
    `Version ${d.versionNo} is ${d.status} and does not change. Make a new version and change that.`,
  "draft-exists": (d: { versionNo: number }) =>
    `Version ${d.versionNo} of this quote is already a draft. Change that one.`,
  "nothing-to-copy": () =>
    "Only a version that was issued can be followed by another. Change the draft instead.",
  "only-version": () => "This is the only version of the quote, so it stays. Change it instead.",
  "open-points": (d: { points: readonly string[] }) =>
    d.points.length === 1
      ? "One point is open before this version can be issued."
      : `${d.points.length} points are open before this version can be issued.`,
  "pieces-are-whole": () => "Parts are counted in whole pieces. Enter a whole number.",
  "too-many-lines": () => "A quote holds up to 200 lines. Put small things together in one line.",
  "price-not-valid": () => "Enter the price in dollars and cents, for example 145.00.",
  "discount-not-valid": () =>
    "Enter the discount in dollars and cents, for example 250.00, or leave it empty.",
  "amount-not-valid": () => "Enter the amount in dollars and cents, for example 3500.00.",
  "discount-over-limit": (d: { limitPct: number }) =>
    `You may give up to ${d.limitPct} % off. Ask the owner for more, or lower the discount.`,
  "date-past": () => "That date has passed. Choose today or a later date.",
  "date-too-far": () => "A quote holds for at most a year. Choose an earlier date.",
  "job-started": (d: { number: number }) =>
    `Work on job ${d.number} has started on the accepted version, so it stays as accepted. Agree changes with the customer as extra work.`,
  "not-issued": (d: { versionNo: number; status: string }) =>
    `Version ${d.versionNo} is ${d.status}. A link is made for an issued version.`,
  "link-for-other-version": () =>
    "This link belongs to another version of the quote. Open the link that was sent with this version.",
  "version-superseded": (d: { versionNo: number; by: number | null }) =>
    d.by === null
      ? `Version ${d.versionNo} was replaced. Ask us for the link to the newer version.`
      : `Version ${d.versionNo} was replaced by version ${d.by}. Ask us for the link to version ${d.by}.`,
  "version-lapsed": (d: { on: string }) =>
    `This quote could be accepted until ${d.on}. Ask us for a new one; we will check prices and dates again.`,
  "already-accepted": () => "This quote was accepted already. You need do nothing more.",
  "already-declined": () => "This quote was declined. Ask us for a new version if you changed your mind.",
  "asked-too-often": () =>
    "You have asked many questions today. Please telephone us, or go on tomorrow; what you typed is still here.",
  "nothing-asked": () => "Nothing was asked on this quote yet. Telephone or write to the customer instead.",
  "not-open": () => "This quote is not open for acceptance. Ask us for a new version.",
  "nothing-accepted": () =>
    "No version of this quote is accepted yet. Record the payment once the customer has accepted.",
  "more-than-due": (d: { remains: string }) =>
    `Only ${d.remains} remain to be paid on this quote. Check the amount.`,
  "more-than-received": (d: { held: string }) =>
    `Only ${d.held} of this quote's money is here. Refund that or less; what is owed beyond it is not a refund.`,
  "refund-reason": () => "Say in at least 10 characters why the money goes back; it stays on record.",
  "paid-back-in-future": () => "The day of the refund cannot be in the future. Choose today or earlier.",
  "received-in-future": () => "The day of receipt cannot be in the future. Choose today or earlier.",
});
