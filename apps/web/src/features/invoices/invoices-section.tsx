import { invoicesOfQuote } from "@buildproof/workshop";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { Section } from "@/design/sheet";
import { dayText } from "@/features/quotes/day-text";
import type { ShownQuote } from "@/features/quotes/shown-quote";
import { load } from "@/server/load";
import { CreditDialog } from "./credit-dialog";
import { IssueInvoiceDialog } from "./issue-invoice-dialog";
import type { ShownInvoice } from "./shown-invoice";

/** What was invoiced on a quote and what was taken back, with the papers of each. */
export async function InvoicesSection({ quote }: { readonly quote: ShownQuote }) {
  const loaded = await load(invoicesOfQuote, { quoteId: quote.id });
  if (!loaded.ok) return null;
  const { invoices, canIssue } = loaded.value;
  if (invoices.length === 0 && !canIssue) return null;
  const { may, shown } = quote;
  return (
    <Section
      title="Invoices"
      aside={canIssue && may.issueInvoice && <IssueInvoiceDialog quoteId={quote.id} today={quote.today} />}
    >
      {invoices.length === 0 ? (
        <p className="fine">Nothing is invoiced yet.</p>
      ) : (
        <RuledTable
          caption="Invoices"
          isCaptionHidden
          columns={[
            { id: "what", title: "Paper" },
            { id: "day", title: "Day" },
            { id: "amount", title: "Amount", align: "figure" },
          ]}
          rows={invoices.map((invoice) => ({
            id: invoice.id,
            cells: {
              what: (
                <>
                  <Paper invoice={invoice} />
                  {may.credit && invoice.leftMinor > 0 && (
                    <CreditDialog invoice={invoice} taxName={shown.site.taxName} />
                  )}
                </>
              ),
              day: dayText(invoice.issuedOn),
              amount: (
                <Money
                  minor={invoice.kind === "invoice" ? invoice.grossMinor : -invoice.grossMinor}
                  currency={shown.currency}
                />
              ),
            },
          }))}
        />
      )}
    </Section>
  );
}

function Paper({ invoice }: { readonly invoice: ShownInvoice }) {
  const { id, number, kind, creditsNumber, reason, isForBusiness, leftMinor, dueOn } = invoice;
  const name = kind === "invoice" ? `Tax invoice ${number}` : `Credit note ${number}`;
  const note =
    kind === "invoice"
      ? leftMinor === 0
        ? "Taken back whole."
        : `To be paid by ${dayText(dueOn)}.`
      : `From invoice ${creditsNumber}. ${reason}`;
  return (
    <>
      <a href={`/api/invoices/${id}/pdf`} target="_blank" rel="noreferrer">
        {name}
      </a>
      {isForBusiness && (
        <>
          {" "}
          <a href={`/api/invoices/${id}/xml`} aria-label={`${name} as an electronic invoice`}>
            XML
          </a>
        </>
      )}
      <span className="sentence-note">{note}</span>
    </>
  );
}
