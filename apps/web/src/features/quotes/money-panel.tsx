import { Money } from "@/design/money";
import { moneyText } from "@/design/money-text";
import { RuledTable } from "@/design/ruled-table";
import { Section, SheetRow } from "@/design/sheet";
import { dayText } from "./day-text";
import { PaymentForm } from "./payment-form";
import { RefundDialog } from "./refund-dialog";
import type { ShownQuote } from "./shown-quote";

/** The deposit: what is asked and why, what is here, and the way to record more. */
export function MoneyPanel({ quote }: { readonly quote: ShownQuote }) {
  const { shown, payments, money, may } = quote;
  const { currency } = shown;
  const missing = money
    ? money.depositMet
      ? money.remainsMinor
      : money.depositMinor - money.receivedMinor
    : 0;
  return (
    <Section
      title="Deposit and payments"
      aside={
        may.refund &&
        quote.heldMinor > 0 && (
          <RefundDialog
            quoteId={quote.id}
            currency={currency}
            today={quote.today}
            held={moneyText(quote.heldMinor, currency)}
          />
        )
      }
    >
      <div>
        <SheetRow label="Deposit asked">
          <Money minor={shown.deposit.dueMinor} currency={currency} />
          <span className="sentence-note">{shown.deposit.covers}</span>
        </SheetRow>
        {money && (
          <>
            <SheetRow label="Received">
              <Money minor={money.receivedMinor} currency={currency} />
              {money.depositMet ? ", the deposit is here in full" : ", the deposit is not here in full"}
            </SheetRow>
            <SheetRow label="Remains to pay">
              <Money minor={money.remainsMinor} currency={currency} />
            </SheetRow>
            {money.owedBackMinor > 0 && (
              <SheetRow label="To go back">
                <Money minor={money.owedBackMinor} currency={currency} />
                <span className="sentence-note">
                  More is here than the invoice asks after its credit notes: pay it back and record the
                  refund.
                </span>
              </SheetRow>
            )}
          </>
        )}
      </div>
      {payments.length > 0 && (
        <RuledTable
          caption="Payments"
          isCaptionHidden
          columns={[
            { id: "day", title: "Day" },
            { id: "how", title: "What and how" },
            { id: "amount", title: "Amount", align: "figure" },
          ]}
          rows={payments.map(({ id, receivedOn, kind, heldAs, method, reference, reason, amountMinor }) => ({
            id,
            cells: {
              day: dayText(receivedOn),
              how: (
                <>
                  {[kind, `by ${method}`, reference].filter(Boolean).join(", ")}
                  {kind !== "refund" && (
                    <>
                      {" "}
                      <a href={`/api/receipts/${id}/pdf`} target="_blank" rel="noreferrer">
                        Receipt
                      </a>
                    </>
                  )}
                  {heldAs && (
                    <span className="sentence-note">
                      {heldAs === "part" ? "A part payment." : "Held as a security deposit."}
                    </span>
                  )}
                  {reason && <span className="sentence-note">{reason}</span>}
                </>
              ),
              amount: <Money minor={kind === "refund" ? -amountMinor : amountMinor} currency={currency} />,
            },
          }))}
        />
      )}
      {money && money.remainsMinor > 0 && may.recordPayment && (
        <PaymentForm
          quoteId={quote.id}
          currency={currency}
          today={quote.today}
          isDepositMet={money.depositMet}
          suggested={moneyText(missing, currency)}
        />
      )}
      {!money && <p className="fine">Payments are recorded once the customer has accepted.</p>}
    </Section>
  );
}
