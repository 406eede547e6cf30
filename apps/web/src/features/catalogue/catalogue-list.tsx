import type { CatalogueLine, PartKind } from "@buildproof/workshop";
import Link from "next/link";
import { EmptyState } from "@/design/empty-state";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { onePart, partHref, partTitles } from "./catalogue-words";

interface CatalogueListProps {
  readonly part: PartKind;
  readonly lines: readonly CatalogueLine[];
  readonly of: number;
  readonly currency: string;
  readonly systems: readonly { readonly code: string; readonly name: string }[];
}

/** What was found of one part of the catalogue. Rows where there is room, one under the other on a telephone. */
export function CatalogueList({ part, lines, of, currency, systems }: CatalogueListProps) {
  if (of === 0)
    return <EmptyState sentence={`There is no ${onePart[part]} yet. Start a draft to add one.`} />;
  if (lines.length === 0)
    return (
      <EmptyState
        sentence={`No ${onePart[part]} is like that. Use other words, or look at all of them.`}
        action={<Link href={`/catalogue?part=${part}`}>All {partTitles[part].toLowerCase()}</Link>}
      />
    );
  const systemName = (code: string) => systems.find((system) => system.code === code)?.name ?? "";
  return (
    <>
      <p className="text-ink-soft">{lines.length === of ? `${of} in all` : `${lines.length} of ${of}`}</p>
      {part === "item" ? (
        <RuledTable
          caption="Items"
          isCaptionHidden
          columns={[
            { id: "name", title: "Item" },
            { id: "system", title: "System" },
            { id: "note", title: "Note" },
            ...(lines.some(({ priceMinor }) => priceMinor !== null)
              ? [{ id: "price", title: "Price without tax", align: "figure" as const }]
              : []),
          ]}
          rows={lines.map((line) => ({
            id: line.code,
            cells: {
              name: <Link href={partHref(part, line.code)}>{line.name}</Link>,
              system: systemName(line.system),
              note: <span className="text-ink-soft">{line.note}</span>,
              price: line.priceMinor === null ? null : <Money minor={line.priceMinor} currency={currency} />,
            },
          }))}
        />
      ) : (
        <ul className="sentences" aria-label={partTitles[part]}>
          {lines.map((line) => (
            <li key={line.code} className="sentence">
              <div>
                <Link href={partHref(part, line.code)}>{line.name}</Link>
                <span className="sentence-note">{line.note}</span>
              </div>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
