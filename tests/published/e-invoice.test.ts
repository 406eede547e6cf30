import {
  type EInvoice,
  type EInvoiceLine,
  eInvoiceProblems,
  eInvoiceXml,
  saudiInvoiceCode,
} from "@buildproof/documents";
import { minorUnits } from "@buildproof/units";
import { describe, expect, test } from "vitest";
import { referenceVectors, unusedVectors } from "./reference-vectors";

type Inputs = Readonly<
  Record<"quantity" | "price" | "lineNet" | "taxable" | "rate" | "tax" | "prepaid", string>
> & {
  readonly lineExtensionAmounts: readonly string[];
  readonly taxGroups: readonly {
    readonly cat: "S" | "Z" | "E" | "O";
    readonly rate: string;
    readonly taxable: string;
  }[];
};
type Expected = Readonly<
  Record<
    | "lineTotal"
    | "taxExclusive"
    | "tax"
    | "taxInclusive"
    | "payable"
    | "lineNet"
    | "customizationId"
    | "profileId",
    string
  >
> & { readonly pass: boolean };

const vectors = referenceVectors<Inputs, Expected>("e-invoice.json");
const codes = referenceVectors<
  Readonly<Record<"seller" | "vatNumber" | "timestamp" | "total" | "vat", string>>,
  { readonly base64: string }
>("invoice-code.json");
const ofRule = (rule: string) => vectors.filter((vector) => "rule" in vector && vector.rule === rule);

const minor = (written: string) => {
  const [whole = "0", fraction = ""] = written.split(".");
  return minorUnits(Number(`${whole}${fraction.padEnd(2, "0")}`));
};

const party = {
  name: "Saltbush Dyno & Driveline",
  abn: "51824753556",
  street: "1 Example Road",
  city: "Example",
  postcode: "5000",
  region: "SA",
  country: "AU",
  email: "desk@saltbush.example",
};

const line = (net: string, more: Partial<EInvoiceLine> = {}): EInvoiceLine => ({
  name: "Work",
  itemCode: "",
  quantity: 1,
  unit: "C62",
  unitPrice: net,
  netMinor: minor(net),
  taxCategory: "S",
  ratePct: 10,
  ...more,
});

const invoice = (more: Partial<EInvoice> = {}): EInvoice => ({
  kind: "invoice",
  number: "INV-1001",
  issuedOn: "2026-11-25",
  dueOn: "2026-12-09",
  currency: "AUD",
  buyerReference: "PO 7",
  note: "",
  credits: null,
  seller: party,
  buyer: { ...party, name: "Fleet of the Plain", abn: "47555222000" },
  lines: [line("100.00")],
  taxes: [{ taxCategory: "S", ratePct: 10, netMinor: minorUnits(10_000), taxMinor: minorUnits(1_000) }],
  prepaidMinor: minorUnits(0),
  paymentTerms: "",
  account: null,
  ...more,
});

/** What an element of that name holds, wherever it stands, in order. */
const held = (xml: string, name: string) =>
  [...xml.matchAll(new RegExp(`<cbc:${name}(?: [^>]*)?>([^<]*)</cbc:${name}>`, "g"))].map(([, text]) => text);

describe("totals of a published invoice", () => {
  const published = ofRule("ubl.totals");

  test.each(published.map((vector) => [vector.id, vector] as const))("%s", (_id, { inputs, expected }) => {
    const group = inputs.taxGroups[0];
    if (!group) throw new Error("a published invoice has its tax");
    const made = invoice({
      kind: expected.tax === "15.94" ? "credit-note" : "invoice",
      credits: expected.tax === "15.94" ? { number: "INV-1", issuedOn: "2026-11-01" } : null,
      lines: inputs.lineExtensionAmounts.map((net) =>
        line(net, { taxCategory: group.cat, ratePct: Number(group.rate) }),
      ),
      taxes: [
        {
          taxCategory: group.cat,
          ratePct: Number(group.rate),
          netMinor: minor(group.taxable),
          taxMinor: minor(expected.tax),
        },
      ],
      prepaidMinor: minor(inputs.prepaid),
    });
    expect(eInvoiceProblems(made)).toEqual([]);
    const xml = eInvoiceXml(made);
    expect(held(xml, "TaxExclusiveAmount")).toEqual([expected.taxExclusive]);
    expect(held(xml, "TaxInclusiveAmount")).toEqual([expected.taxInclusive]);
    expect(held(xml, "PayableAmount")).toEqual([expected.payable]);
    expect(held(xml, "LineExtensionAmount")[0]).toBe(expected.lineTotal);
    expect(held(xml, "TaxAmount")).toEqual([expected.tax, expected.tax]);
  });
});

describe("rules of the standard", () => {
  test("a line is its quantity times its price, rounded", () => {
    for (const { inputs, expected } of ofRule("ubl.lineNet")) {
      const own = line(expected.lineNet, { quantity: inputs.quantity, unitPrice: inputs.price });
      const xml = eInvoiceXml(invoice({ lines: [own] }));
      expect(held(xml, "AllowanceChargeReason")).toEqual([]);
      expect(held(xml, "PriceAmount")).toEqual([inputs.price]);
    }
  });

  test("R120: a line may differ from it by two cents and no more", () => {
    for (const { inputs, expected } of ofRule("ubl.R120")) {
      const own = line(inputs.lineNet, { quantity: inputs.quantity, unitPrice: inputs.price });
      const problems = eInvoiceProblems(invoice({ lines: [own] }));
      expect(problems.some((problem) => problem.includes("R120"))).toBe(!expected.pass);
    }
  });

  test("CO-17: the tax of a category is its rate to within one dollar", () => {
    for (const { inputs, expected } of ofRule("ubl.BR-CO-17")) {
      const netMinor = minor(inputs.taxable);
      const problems = eInvoiceProblems(
        invoice({
          lines: [line(inputs.taxable)],
          taxes: [{ taxCategory: "S", ratePct: Number(inputs.rate), netMinor, taxMinor: minor(inputs.tax) }],
        }),
      );
      expect(problems.some((problem) => problem.includes("CO-17"))).toBe(!expected.pass);
    }
  });

  test("CO-25: what is to be paid has its day or its terms", () => {
    for (const { expected } of ofRule("ubl.BR-CO-25")) {
      const problems = eInvoiceProblems(invoice({ dueOn: "" }));
      expect(problems.some((problem) => problem.includes("CO-25"))).toBe(!expected.pass);
    }
    expect(eInvoiceProblems(invoice({ dueOn: "", paymentTerms: "14 days" }))).toEqual([]);
  });

  test("it carries the identifiers of PINT A-NZ", () => {
    for (const { expected } of ofRule("peppol.ids")) {
      const xml = eInvoiceXml(invoice());
      expect(held(xml, "CustomizationID")).toEqual([expected.customizationId]);
      expect(held(xml, "ProfileID")).toEqual([expected.profileId]);
    }
  });

  test("a private customer without a number gets the PDF, and other gaps are named with their rule", () => {
    const problems = eInvoiceProblems(
      invoice({ number: "", lines: [], taxes: [], buyerReference: "", buyer: { ...party, abn: "" } }),
    );
    expect(problems.map((problem) => /\((.*)\)$/.exec(problem)?.[1])).toEqual([
      "BR-02",
      "BR-16",
      "PEPPOL-EN16931-R003",
      "AUNZ-R-004",
    ]);
    expect(eInvoiceProblems(invoice({ lines: [line("90.00")] }))).toHaveLength(2);
    const outside = {
      taxCategory: "O" as const,
      ratePct: 0,
      netMinor: minorUnits(0),
      taxMinor: minorUnits(0),
    };
    const taxed = invoice().taxes;
    expect(eInvoiceProblems(invoice({ taxes: [...taxed, outside] }))).toEqual([
      "What is outside the tax stands on a document of its own. (BR-O-11)",
    ]);
  });

  test("a discount is an allowance of the line, and any script or sign survives", () => {
    const xml = eInvoiceXml(
      invoice({
        lines: [line("90.00", { name: "مضخة <&> “größer”\u0000", unitPrice: "100.00" })],
        taxes: [{ taxCategory: "S", ratePct: 10, netMinor: minorUnits(9_000), taxMinor: minorUnits(900) }],
      }),
    );
    expect(xml).toContain("<cbc:Name>مضخة &lt;&amp;&gt; “größer”</cbc:Name>");
    expect(held(xml, "Amount")).toEqual(["10.00"]);
    expect(held(xml, "ChargeIndicator")).toEqual(["false"]);
  });
});

/** Order of the children of each element that is written, from the sequences of UBL 2.1; from memory. */
const order: Readonly<Record<string, readonly string[]>> = {
  Invoice:
    "CustomizationID ProfileID ID IssueDate DueDate InvoiceTypeCode Note DocumentCurrencyCode BuyerReference BillingReference AccountingSupplierParty AccountingCustomerParty PaymentMeans PaymentTerms TaxTotal LegalMonetaryTotal InvoiceLine".split(
      " ",
    ),
  CreditNote:
    "CustomizationID ProfileID ID IssueDate CreditNoteTypeCode Note DocumentCurrencyCode BuyerReference BillingReference AccountingSupplierParty AccountingCustomerParty PaymentMeans PaymentTerms TaxTotal LegalMonetaryTotal CreditNoteLine".split(
      " ",
    ),
};

test.each(["invoice", "credit-note"] as const)(
  "the parts of an %s stand in the order of the standard",
  (kind) => {
    const credits = kind === "credit-note" ? { number: "INV-1", issuedOn: "2026-11-01" } : null;
    const account = { branch: "065-000", number: "12345678", name: "Saltbush" };
    const xml = eInvoiceXml(invoice({ kind, credits, account, note: "n", paymentTerms: "14 days" }));
    const found = [...xml.matchAll(/^ {2}<c[ab]c:(\w+)/gm)].map(([, name]) => name);
    const wanted = order[kind === "invoice" ? "Invoice" : "CreditNote"] ?? [];
    expect(found).toEqual(wanted.filter((name) => kind === "credit-note" || name !== "BillingReference"));
  },
);

describe("the code of a Saudi invoice", () => {
  test.each(codes.map((vector) => [vector.id, vector] as const))("%s", (_id, { inputs, expected }) => {
    const { timestamp, ...rest } = inputs;
    expect(saudiInvoiceCode({ ...rest, issuedAt: timestamp })).toBe(expected.base64);
  });

  test("refuses a name of more than 255 bytes", () => {
    const { inputs } = codes[0] ?? { inputs: null };
    if (!inputs) throw new Error("there is a vector");
    const long = { ...inputs, issuedAt: inputs.timestamp, seller: "ورشة".repeat(40) };
    expect(() => saudiInvoiceCode(long)).toThrow(RangeError);
  });
});

test("every vector was checked", () => {
  expect(unusedVectors("e-invoice.json")).toEqual([]);
  expect(unusedVectors("invoice-code.json")).toEqual([]);
});
