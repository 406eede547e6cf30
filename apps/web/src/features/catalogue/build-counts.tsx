import type { ProofReport } from "@buildproof/workshop";
import { RuledTable } from "@/design/ruled-table";

/** How many builds there are, by vehicle and package. */
export function BuildCounts({ vehicles }: Pick<ProofReport, "vehicles">) {
  const hasWays = vehicles.some(({ counts }) => counts.some(({ ways }) => ways !== null));
  return (
    <RuledTable
      caption="Builds by vehicle and package"
      isCaptionHidden
      columns={[
        { id: "vehicle", title: "Vehicle" },
        { id: "package", title: "With" },
        { id: "builds", title: "Builds", align: "figure" },
        ...(hasWays ? [{ id: "ways", title: "Ways to take it", align: "figure" } as const] : []),
      ]}
      rows={vehicles.flatMap(({ code, name, counts }) =>
        counts.map((count) => ({
          id: `${code} ${count.package ?? ""}`,
          cells: {
            vehicle: name,
            package: count.package ?? "anything",
            builds: count.builds,
            ways: count.ways ?? "–",
          },
        })),
      )}
    />
  );
}
