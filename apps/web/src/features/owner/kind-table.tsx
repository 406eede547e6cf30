import { costKinds } from "@buildproof/workshop";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { kindPaths, kindWords } from "./kind-words";
import type { ShownJob } from "./shown-margins";

/** A job's cost kind by kind, quoted against actual. */
export function KindTable({ earnings, currency }: Pick<ShownJob, "earnings" | "currency">) {
  const { quotedMinor, actualMinor, quotedCostMinor, actualCostMinor } = earnings;
  const money = (minor: number, signed = false) => (
    <Money minor={minor} currency={currency} signed={signed} />
  );
  return (
    <RuledTable
      caption="Cost by kind, quoted against actual"
      isCaptionHidden
      columns={[
        { id: "kind", title: "Kind" },
        { id: "quoted", title: "Quoted cost", align: "figure" },
        { id: "actual", title: "Actual cost", align: "figure" },
        { id: "over", title: "Over", align: "figure" },
      ]}
      rows={costKinds.map((kind) => ({
        id: kind,
        cells: {
          kind: <a href={`#${kindPaths[kind]}`}>{kindWords[kind]}</a>,
          quoted: money(quotedMinor[kind]),
          actual: money(actualMinor[kind]),
          over: money(actualMinor[kind] - quotedMinor[kind], true),
        },
      }))}
      total={{
        kind: "Together",
        quoted: money(quotedCostMinor),
        actual: money(actualCostMinor),
        over: money(actualCostMinor - quotedCostMinor, true),
      }}
    />
  );
}
