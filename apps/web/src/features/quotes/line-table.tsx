import { Money } from "@/design/money";
import { EditLine } from "./line-dialogs";
import { quantityText } from "./quantity-text";

interface ShownLine {
  readonly id: string;
  readonly kind: string;
  readonly description: string;
  readonly quantity: string;
  readonly unit: string;
  readonly discountPct: string;
  readonly grossMinor: number;
}

interface LineTableProps {
  readonly lines: readonly ShownLine[];
  readonly currency: string;
  readonly taxName: string;
  readonly totals: {
    readonly discountMinor: number;
    readonly netMinor: number;
    readonly taxMinor: number;
    readonly grossMinor: number;
  };
  /** Given while the lines may be changed. */
  readonly draft: {
    readonly versionId: string;
    readonly revision: number;
    readonly discountHelp: string;
  } | null;
  /** What each line costs us, for those who may see it. */
  readonly costOf: Readonly<Record<string, number>> | null;
}

const groups: readonly { readonly kinds: readonly string[]; readonly title: string }[] = [
  { kinds: ["item"], title: "Parts and kits" },
  { kinds: ["operation", "access"], title: "Workshop labour" },
  { kinds: ["dyno"], title: "Dyno" },
  { kinds: ["fee"], title: "Consumables and fees" },
  { kinds: ["extra"], title: "Also" },
];

/** The lines of a version under their headings, each with what the customer pays, tax included. */
export function LineTable(props: LineTableProps) {
  const { lines, currency, taxName, draft, costOf } = props;
  const columns = 3 + (costOf ? 1 : 0) + (draft ? 1 : 0);
  const shown = groups
    .map(({ kinds, title }) => ({ title, rows: lines.filter(({ kind }) => kinds.includes(kind)) }))
    .filter(({ rows }) => rows.length > 0);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard (WCAG 2.1.1).
    <section className="ruled-table-frame" tabIndex={0} aria-label="Lines of the quote">
      <table className="ruled-table">
        <caption className="visually-hidden">Lines of the quote</caption>
        <thead>
          <tr>
            <th scope="col">Item or work</th>
            <th scope="col" data-align="figure">
              Quantity
            </th>
            {costOf && (
              <th scope="col" data-align="figure">
                Costs us
              </th>
            )}
            <th scope="col" data-align="figure">
              With {taxName}
            </th>
            {draft && (
              <th scope="col" className="no-print">
                <span className="visually-hidden">Change</span>
              </th>
            )}
          </tr>
        </thead>
        {shown.map(({ title, rows }) => (
          <tbody key={title}>
            <tr>
              <th scope="rowgroup" colSpan={columns - (draft ? 2 : 1)} className="pt-4! font-bold!">
                {title}
              </th>
              <td data-align="figure" className="pt-4! font-semibold!">
                <Money minor={rows.reduce((sum, row) => sum + row.grossMinor, 0)} currency={currency} />
              </td>
              {draft && <td className="no-print" />}
            </tr>
            {rows.map((line) => (
              <tr key={line.id}>
                <th scope="row" className="font-normal!">
                  {line.description}
                  {line.discountPct !== "0" && <span className="fine"> less {line.discountPct} %</span>}
                </th>
                <td data-align="figure">{quantityText(line.quantity, line.unit)}</td>
                {costOf && (
                  <td data-align="figure" className="text-ink-soft">
                    <Money minor={costOf[line.id] ?? 0} currency={currency} />
                  </td>
                )}
                <td data-align="figure">
                  <Money minor={line.grossMinor} currency={currency} />
                </td>
                {draft && (
                  <td data-align="figure" className="no-print">
                    <EditLine line={line} {...draft} />
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        ))}
        <Totals {...props} columns={columns} />
      </table>
    </section>
  );
}

function Totals({
  totals,
  currency,
  taxName,
  draft,
  columns,
}: LineTableProps & { readonly columns: number }) {
  const before = columns - (draft ? 2 : 1);
  const rows = [
    ...(totals.discountMinor > 0
      ? [
          {
            title: `Discount off the whole, without ${taxName}, included above`,
            minor: -totals.discountMinor,
          },
        ]
      : []),
    { title: `Without ${taxName}`, minor: totals.netMinor },
    { title: taxName, minor: totals.taxMinor },
  ];
  return (
    <tfoot>
      {rows.map(({ title, minor }) => (
        <tr key={title}>
          <th scope="row" colSpan={before} className="border-b-0! font-normal!">
            {title}
          </th>
          <td data-align="figure" className="border-b-0! font-normal!">
            <Money minor={minor} currency={currency} />
          </td>
          {draft && <td className="no-print border-b-0!" />}
        </tr>
      ))}
      <tr>
        <th scope="row" colSpan={before}>
          Total with {taxName}
        </th>
        <td data-align="figure">
          <Money minor={totals.grossMinor} currency={currency} />
        </td>
        {draft && <td className="no-print" />}
      </tr>
    </tfoot>
  );
}
