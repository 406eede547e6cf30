import { Moment } from "@/design/moment";

interface MessageThreadProps {
  readonly messages: readonly {
    readonly id: string;
    readonly text: string;
    readonly at: Date;
    readonly fromCustomer: boolean;
    readonly by: string | null;
  }[];
  /** What the customer is called here: their name, or "You" on their own page. */
  readonly customer: string;
  readonly timeZone: string;
}

/** What was asked and answered, in the order it was said. */
export function MessageThread({ messages, customer, timeZone }: MessageThreadProps) {
  return (
    <ol className="grid gap-3">
      {messages.map(({ id, text, at, fromCustomer, by }) => (
        <li key={id} className={fromCustomer ? "grid gap-1" : "grid gap-1 border-s-2 border-ink ps-3"}>
          <p className="fine">
            {fromCustomer ? customer : by}, <Moment at={at} timeZone={timeZone} />
          </p>
          <p className="whitespace-pre-line">{text}</p>
        </li>
      ))}
    </ol>
  );
}
