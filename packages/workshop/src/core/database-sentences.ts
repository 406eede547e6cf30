import type { DatabaseRefusal } from "@buildproof/database";
import type { Refusal } from "./result";

/** What the database itself refuses, in words. Use cases look first; this is for the race they lost. */
const sentences: Readonly<Record<string, string>> = {
  no_double_booking:
    "That time was just taken by another booking on the same resource. Choose another time or resource.",
  one_clock_per_person: "You are already clocked on at that time. Clock off the other job first.",
  one_live_version: "Another version of this quote was issued a moment ago. Open the quote again to see it.",
  append_only: "What was recorded here is kept as it is. Add a new entry instead.",
  issued_version_is_final: "An issued version does not change. Make a new version instead.",
  published_catalogue_is_final:
    "A published version of the catalogue stays as it was. Start a new draft instead.",
  quote_version_status: "This version is no longer in a state that allows that. Open the quote again.",
  started_job_keeps_its_quote:
    "Work has started on the accepted version, so it stays as accepted. Raise a variation instead.",
  open_obligation: "An obligation of this job is still open. Attach its evidence first.",
  handed_over_by_hand_over: "A job is handed over on its hand-over page only.",
  booking_takes_time: "A booking ends after it starts. Check the two times.",
  correction_has_its_reason:
    "A corrected clock entry names who corrected it and why. Correct it again with both.",
  clock_runs_forward: "The clock cannot stop before it started. Check the times.",
  quantity_is_positive: "A quantity is at least 1.",
  vehicle_workshop_id_vin_key: "This VIN was added a moment ago. Find the vehicle by its VIN and open it.",
  person_email_key: "Somebody signs in with that e-mail already. Use another address.",
  invoice_numbers_follow: "Another invoice was issued at the same moment. Issue this one again.",
  credit_within_invoice:
    "No more is credited than was invoiced. Open the quote again and check what is left.",
  refund_within_received: "No more goes back than was received. Open the quote again and check the amount.",
  payment_is_positive: "An amount is more than nothing.",
};

/** Null when the error is not one that a person caused. */
export function refusalOfDatabase(refusal: DatabaseRefusal | null): Refusal | null {
  if (!refusal) return null;
  const name = refusal.constraint ?? /(\w+): /.exec(refusal.message)?.[1];
  const sentence = name ? sentences[name] : undefined;
  if (name && sentence) return { code: name.replaceAll("_", "-"), sentence };
  if (refusal.kind === "conflict") {
    return {
      code: "conflict",
      sentence: "Somebody else changed this at the same moment. Open it again and repeat.",
    };
  }
  if (refusal.kind === "unreachable") {
    return {
      code: "database-away",
      sentence: "The workshop's database does not answer. What you typed is kept; try again in a moment.",
    };
  }
  return null;
}
