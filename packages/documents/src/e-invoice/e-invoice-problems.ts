import { currencyDecimals, type MinorUnits, sumMinorUnits } from "@buildproof/units";
import type { EInvoice, EInvoiceParty } from "./e-invoice";
import { lineAllowance } from "./line-allowance";

/** A rounding that the standard lets pass between a line and its quantity times price. */
const SLACK_MINOR = 2;

/**
 * What stands in the way of sending this, one sentence each with the rule it breaks; empty when nothing does.
 *
 * @source EN 16931-1 business rules BR-02 to BR-16, BR-CO-10, -14, -17, -25, BR-O-11 to 14 and Peppol R003, R120;
 *         AUNZ-R-001, -004: both parties have an ABN. Read in the A-NZ schematron, whose numbers PINT changes.
 */
export function eInvoiceProblems(invoice: EInvoice): readonly string[] {
  return [...partsMissing(invoice), ...sumsThatDiffer(invoice), ...categoriesMixed(invoice)];
}

function partsMissing(invoice: EInvoice): readonly string[] {
  const problems: string[] = [];
  const ask = (there: boolean, rule: string, sentence: string) => {
    if (!there) problems.push(`${sentence} (${rule})`);
  };
  ask(invoice.number !== "", "BR-02", "Give the document its number.");
  ask(invoice.lines.length > 0, "BR-16", "It has at least one line.");
  ask(
    invoice.buyerReference !== "",
    "PEPPOL-EN16931-R003",
    "Say the customer's order number or who ordered.",
  );
  ask(invoice.dueOn !== "" || invoice.paymentTerms !== "", "BR-CO-25", "Say when it is to be paid.");
  ask(currencyDecimals(invoice.currency) <= 2, "BR-DEC", "Amounts have at most two decimals here.");
  ask(
    (invoice.credits !== null) === (invoice.kind === "credit-note"),
    "BR-55",
    "A credit note names its invoice.",
  );
  problems.push(...partyProblems("seller", invoice.seller), ...partyProblems("buyer", invoice.buyer));
  for (const [at, line] of invoice.lines.entries())
    ask(line.name.trim() !== "", "BR-25", `Line ${at + 1} needs a name.`);
  return problems;
}

function partyProblems(whose: "seller" | "buyer", party: EInvoiceParty): readonly string[] {
  const rules = { seller: ["BR-06", "BR-09", "AUNZ-R-001"], buyer: ["BR-07", "BR-11", "AUNZ-R-004"] }[whose];
  return [
    ...(party.name.trim() === "" ? [`The ${whose} needs a name. (${rules[0]})`] : []),
    ...(party.country === "" ? [`The ${whose} needs a country. (${rules[1]})`] : []),
    ...(party.abn === "" ? [`The ${whose} needs an ABN; send the PDF instead. (${rules[2]})`] : []),
  ];
}

function sumsThatDiffer({ lines, taxes, currency }: EInvoice): readonly string[] {
  const problems: string[] = [];
  for (const [at, line] of lines.entries())
    if (lineAllowance(line, currency) < -SLACK_MINOR)
      problems.push(`Line ${at + 1} comes to more than its quantity times its price. (PEPPOL-EN16931-R120)`);
  for (const { taxCategory, ratePct, netMinor, taxMinor } of taxes) {
    const own = lines.filter((line) => line.taxCategory === taxCategory && line.ratePct === ratePct);
    if (netOf(own) !== netMinor)
      problems.push(`The lines of category ${taxCategory} do not add up to its sum. (BR-${taxCategory}-08)`);
    if (Math.abs(netMinor * ratePct - taxMinor * 100) >= 10_000)
      problems.push(`The tax of category ${taxCategory} is not ${ratePct} % of its sum. (BR-CO-17)`);
  }
  if (netOf(lines) !== netOf(taxes)) problems.push("The lines do not add up to the taxed sums. (BR-CO-13)");
  return problems;
}

function categoriesMixed({ taxes }: EInvoice): readonly string[] {
  const mixed = taxes.length > 1 && taxes.some(({ taxCategory }) => taxCategory === "O");
  return mixed ? ["What is outside the tax stands on a document of its own. (BR-O-11)"] : [];
}

/** The sum of what is without tax. */
export function netOf(parts: readonly { readonly netMinor: MinorUnits }[]): MinorUnits {
  return sumMinorUnits(parts.map(({ netMinor }) => netMinor));
}
