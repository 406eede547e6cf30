import {
  decimalAmount,
  decimalText,
  exactDecimal,
  type MinorUnits,
  minorUnits,
  sumMinorUnits,
} from "@buildproof/units";
import {
  type EInvoice,
  type EInvoiceLine,
  type EInvoiceParty,
  type EInvoiceTax,
  eInvoiceKinds,
} from "./e-invoice";
import { netOf } from "./e-invoice-problems";
import { lineAllowance } from "./line-allowance";
import { element, type XmlElement, xmlDocument } from "./xml-element";

const common = "urn:oasis:names:specification:ubl:schema:xsd:Common";
/** The register of Australian business numbers among the electronic address schemes. */
const ABN_SCHEME = "0151";

/**
 * The document in UBL 2.1 with the identifiers of PINT A-NZ. Ask `eInvoiceProblems` first: this writes what it is
 * given.
 *
 * @source OASIS UBL 2.1 (ISO/IEC 19845), order of elements from memory; Peppol PINT A-NZ Billing: its
 *         specification and process identifiers; UNCL 1001 (kind), 4461 (credit transfer), 5189 (discount), 5305.
 */
export function eInvoiceXml(invoice: EInvoice): string {
  const isCredit = invoice.kind === "credit-note";
  const document = isCredit ? "CreditNote" : "Invoice";
  const root = element(
    document,
    [
      text("CustomizationID", "urn:peppol:pint:billing-1@aunz-1"),
      text("ProfileID", "urn:peppol:bis:billing"),
      text("ID", invoice.number),
      text("IssueDate", invoice.issuedOn),
      isCredit ? null : text("DueDate", invoice.dueOn),
      text(`${document}TypeCode`, eInvoiceKinds[invoice.kind]),
      text("Note", invoice.note),
      text("DocumentCurrencyCode", invoice.currency),
      text("BuyerReference", invoice.buyerReference),
      invoice.credits
        ? group("BillingReference", [
            group("InvoiceDocumentReference", [
              text("ID", invoice.credits.number),
              text("IssueDate", invoice.credits.issuedOn),
            ]),
          ])
        : null,
      group("AccountingSupplierParty", [party(invoice.seller)]),
      group("AccountingCustomerParty", [party(invoice.buyer)]),
      paymentMeans(invoice),
      group("PaymentTerms", [text("Note", invoice.paymentTerms)]),
      taxTotal(invoice),
      monetaryTotal(invoice),
      ...invoice.lines.map((line, at) => lineOf(invoice, line, at)),
    ],
    {
      xmlns: `urn:oasis:names:specification:ubl:schema:xsd:${document}-2`,
      "xmlns:cac": `${common}AggregateComponents-2`,
      "xmlns:cbc": `${common}BasicComponents-2`,
    },
  );
  if (!root) throw new Error("a document has its identifiers at least");
  return xmlDocument(root);
}

const text = (name: string, content: string, attributes?: Readonly<Record<string, string>>) =>
  element(`cbc:${name}`, content, attributes);

const group = (name: string, content: readonly (XmlElement | null)[]) => element(`cac:${name}`, content);

const amount = (name: string, minor: MinorUnits, { currency }: EInvoice) =>
  text(name, decimalAmount(minor, currency), { currencyID: currency });

function party({ name, abn, street, city, postcode, region, country, email }: EInvoiceParty) {
  return group("Party", [
    text("EndpointID", abn, { schemeID: ABN_SCHEME }),
    group("PartyName", [text("Name", name)]),
    group("PostalAddress", [
      text("StreetName", street),
      text("CityName", city),
      text("PostalZone", postcode),
      text("CountrySubentity", region),
      group("Country", [text("IdentificationCode", country)]),
    ]),
    abn === "" ? null : group("PartyTaxScheme", [text("CompanyID", abn), taxScheme()]),
    group("PartyLegalEntity", [
      text("RegistrationName", name),
      text("CompanyID", abn, { schemeID: ABN_SCHEME }),
    ]),
    group("Contact", [text("ElectronicMail", email)]),
  ]);
}

const taxScheme = () => group("TaxScheme", [text("ID", "GST")]);

function taxCategory(
  name: string,
  { taxCategory: code, ratePct }: Pick<EInvoiceTax, "taxCategory" | "ratePct">,
) {
  // What is outside the tax has no rate, not a rate of nothing.
  const rate = code === "O" ? null : text("Percent", String(ratePct));
  return group(name, [text("ID", code), rate, taxScheme()]);
}

function paymentMeans({ account }: EInvoice) {
  if (!account) return null;
  return group("PaymentMeans", [
    text("PaymentMeansCode", "30"),
    group("PayeeFinancialAccount", [
      text("ID", account.number),
      text("Name", account.name),
      group("FinancialInstitutionBranch", [text("ID", account.branch)]),
    ]),
  ]);
}

function taxTotal(invoice: EInvoice) {
  return group("TaxTotal", [
    amount("TaxAmount", taxOf(invoice), invoice),
    ...invoice.taxes.map((tax) =>
      group("TaxSubtotal", [
        amount("TaxableAmount", tax.netMinor, invoice),
        amount("TaxAmount", tax.taxMinor, invoice),
        taxCategory("TaxCategory", tax),
      ]),
    ),
  ]);
}

const taxOf = ({ taxes }: EInvoice) => sumMinorUnits(taxes.map(({ taxMinor }) => taxMinor));

function monetaryTotal(invoice: EInvoice) {
  const net = netOf(invoice.lines);
  const gross = sumMinorUnits([net, taxOf(invoice)]);
  return group("LegalMonetaryTotal", [
    amount("LineExtensionAmount", net, invoice),
    amount("TaxExclusiveAmount", net, invoice),
    amount("TaxInclusiveAmount", gross, invoice),
    invoice.prepaidMinor === 0 ? null : amount("PrepaidAmount", invoice.prepaidMinor, invoice),
    amount("PayableAmount", minorUnits(gross - invoice.prepaidMinor), invoice),
  ]);
}

function lineOf(invoice: EInvoice, line: EInvoiceLine, at: number) {
  const credit = invoice.kind === "credit-note";
  const off = lineAllowance(line, invoice.currency);
  return group(credit ? "CreditNoteLine" : "InvoiceLine", [
    text("ID", String(at + 1)),
    text(credit ? "CreditedQuantity" : "InvoicedQuantity", plain(line.quantity), { unitCode: line.unit }),
    amount("LineExtensionAmount", line.netMinor, invoice),
    off > 0
      ? group("AllowanceCharge", [
          text("ChargeIndicator", "false"),
          text("AllowanceChargeReasonCode", "95"),
          text("AllowanceChargeReason", "Discount"),
          amount("Amount", off, invoice),
        ])
      : null,
    group("Item", [
      text("Name", line.name),
      group("SellersItemIdentification", [text("ID", line.itemCode)]),
      taxCategory("ClassifiedTaxCategory", line),
    ]),
    group("Price", [text("PriceAmount", plain(line.unitPrice), { currencyID: invoice.currency })]),
  ]);
}

const plain = (written: EInvoiceLine["quantity"]) => decimalText(exactDecimal(written));
