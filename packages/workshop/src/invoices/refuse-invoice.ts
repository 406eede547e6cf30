import { refusals } from "../core/result";

/** What is refused about invoices and credit notes, in words. */
export const refuseInvoice = refusals({
  "quote-not-found": () => "There is no such quote in this workshop. Open it again from the list of quotes.",
  "invoice-not-found": () => "There is no such invoice in this workshop. Open it again from the quote.",
  "nothing-accepted": () =>
    "No version of this quote is accepted yet. Invoice it once the customer has accepted.",
  "invoice-stands": (d: { number: number }) =>
    `Invoice ${d.number} already asks for this work. Write a credit note for it first if it is wrong.`,
  "nothing-to-invoice": () => "This version comes to nothing, so there is nothing to invoice.",
  "due-past": () => "The day it is due has passed. Choose today or a later date.",
  "buyer-unnamed": () =>
    "From $1,000 a tax invoice names its recipient. Enter the customer's name, then issue it.",
  "not-an-invoice": () => "A credit note is not credited. Issue a new invoice instead.",
  "nothing-chosen": () => "Choose the lines to take back, or enter an amount.",
  "line-credited": (d: { description: string }) =>
    `“${d.description}” was taken back before. Leave it out, or credit an amount.`,
  "amount-not-valid": () => "Enter the amount with its decimals, for example 350.00.",
  "more-than-invoiced": (d: { left: string }) =>
    `Only ${d.left} of this invoice is left to credit. Credit that or less.`,
  "credit-reason": () => "Say in at least 10 characters why it is credited; the customer reads it.",
  "not-electronic": (d: { points: readonly string[] }) =>
    `It cannot go as an electronic invoice yet. ${d.points.join(" ")}`,
});
