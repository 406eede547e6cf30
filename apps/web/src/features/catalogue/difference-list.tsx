import type { ChangeInWords } from "@buildproof/workshop";
import { RuledTable } from "@/design/ruled-table";

const kinds = { new: "new", changed: "changed", gone: "taken out" } as const;

/** "changed", "new" or "taken out", after the name of what it is about. */
export function changeKind(kind: ChangeInWords["kind"]): string {
  return kinds[kind];
}

interface DifferenceListProps {
  readonly caption: string;
  readonly differences: ChangeInWords["differences"];
}

/** What was said of a part before and after, line by line: only what differs. */
export function DifferenceList({ caption, differences }: DifferenceListProps) {
  if (differences.length === 0) return null;
  return (
    <RuledTable
      caption={caption}
      isCaptionHidden
      columns={[
        { id: "label", title: "What" },
        ...(differences.every(({ before }) => before === null) ? [] : [{ id: "before", title: "Before" }]),
        ...(differences.every(({ after }) => after === null) ? [] : [{ id: "after", title: "After" }]),
      ]}
      rows={differences.map(({ label, before, after }) => ({
        id: label,
        cells: { label, before: before ?? "nothing", after: after ?? "nothing" },
      }))}
    />
  );
}
