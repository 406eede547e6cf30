import { refusals } from "../core/result";

export const refuseOwner = refusals({
  "job-not-found": () => "There is no such job in your workshop. Go back to the margins.",
  "package-not-found": () => "There is no such package in your workshop. Go back to the margins.",
  "cost-not-an-amount": () =>
    "Type the amount without tax, such as 1,940.00; a credit note with a minus before it.",
  "cost-is-nothing": () => "An amount of nothing changes nothing. Type what was invoiced.",
  "cost-in-future": () => "An invoice is dated today or before. Check the date.",
});
