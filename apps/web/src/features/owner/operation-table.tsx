import type { OperationHours } from "@buildproof/workshop";
import { Figure } from "@/design/figure";
import { RuledTable } from "@/design/ruled-table";

/** Hours quoted against hours clocked, operation by operation, what ran over furthest first. */
export function OperationTable({ operations }: { readonly operations: readonly OperationHours[] }) {
  return (
    <RuledTable
      caption="Hours by operation, quoted against clocked"
      isCaptionHidden
      columns={[
        { id: "operation", title: "Operation" },
        { id: "over", title: "Over", align: "figure" },
        { id: "quoted", title: "Quoted", align: "figure" },
        { id: "clocked", title: "Clocked", align: "figure" },
      ]}
      rows={operations.map(({ code, name, quotedHours, clockedHours }) => ({
        id: code,
        cells: {
          operation: name,
          over: <Figure value={clockedHours - quotedHours} unit="h" decimals={1} signed />,
          quoted: <Figure value={quotedHours} unit="h" decimals={1} />,
          clocked: <Figure value={clockedHours} unit="h" decimals={1} />,
        },
      }))}
    />
  );
}
