import { figureText } from "@/design/figure-text";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { kindWords } from "./kind-words";
import type { ShownJob } from "./shown-margins";

/** The lines of the accepted version: what each sold for and was to cost. */
export function LineCostTable({ lines, currency }: Pick<ShownJob, "lines" | "currency">) {
  const sell = lines.reduce((sum, line) => sum + line.sellMinor, 0);
  const cost = lines.reduce((sum, line) => sum + line.costMinor, 0);
  return (
    <RuledTable
      caption="Lines of the accepted version"
      isCaptionHidden
      columns={[
        { id: "what", title: "Line" },
        { id: "quantity", title: "Quantity", align: "figure" },
        { id: "sell", title: "Sold", align: "figure" },
        { id: "cost", title: "Quoted cost", align: "figure" },
        { id: "kind", title: "Kind" },
      ]}
      rows={lines.map((line) => ({
        id: line.id,
        cells: {
          what: line.description,
          quantity: line.unit === "h" ? `${figureText(line.quantity, 1)} h` : figureText(line.quantity),
          sell: <Money minor={line.sellMinor} currency={currency} />,
          cost: <Money minor={line.costMinor} currency={currency} />,
          kind: kindWords[line.kind],
        },
      }))}
      total={{
        what: "Together",
        sell: <Money minor={sell} currency={currency} />,
        cost: <Money minor={cost} currency={currency} />,
      }}
    />
  );
}
