import type { ProofReport } from "@buildproof/workshop";
import { RuledTable } from "@/design/ruled-table";

type Vehicles = ProofReport["vehicles"];

const verdictWords: Readonly<Record<Vehicles[number]["limits"][number]["verdict"], string>> = {
  "kept-by-others": "never reached",
  "kept-by-itself": "kept by its rule",
  "set-aside": "kept unless set aside",
  exceeded: "not kept",
  unsettled: "not settled",
};

/** Every limit on every vehicle, in words. */
export function LimitTable({ vehicles }: { readonly vehicles: Vehicles }) {
  const names = new Map(vehicles.flatMap(({ limits }) => limits.map(({ limit, name }) => [limit, name])));
  return (
    <RuledTable
      caption="Limits by vehicle"
      isCaptionHidden
      columns={[
        { id: "limit", title: "Limit" },
        ...vehicles.map(({ code, name }) => ({ id: code, title: name })),
      ]}
      rows={[...names].map(([limit, name]) => ({
        id: limit,
        cells: {
          limit: name,
          ...Object.fromEntries(vehicles.map((vehicle) => [vehicle.code, verdictOf(vehicle, limit)])),
        },
      }))}
    />
  );
}

function verdictOf({ limits }: Vehicles[number], limit: string) {
  const found = limits.find((each) => each.limit === limit);
  if (!found) return <span className="fine">not asked</span>;
  const words = verdictWords[found.verdict];
  return found.verdict === "exceeded" ? <strong>{words}</strong> : words;
}
