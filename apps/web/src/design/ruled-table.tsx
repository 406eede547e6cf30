import type { ReactNode } from "react";

interface Column {
  readonly id: string;
  readonly title: ReactNode;
  /** Figures stand to the right, so that their digits line up. */
  readonly align?: "text" | "figure";
}

interface RuledTableProps {
  readonly caption: string;
  /** The caption is there for those who cannot see the heading above. */
  readonly isCaptionHidden?: boolean;
  readonly columns: readonly Column[];
  /** The first column names its row. */
  readonly rows: readonly { readonly id: string; readonly cells: Readonly<Record<string, ReactNode>> }[];
  readonly total?: Readonly<Record<string, ReactNode>>;
  /** Said in place of rows. */
  readonly empty?: ReactNode;
}

/** A table with lines under its rows and nothing boxed. Wide ones scroll inside their frame, by keyboard too. */
export function RuledTable(props: RuledTableProps) {
  const { caption, isCaptionHidden = false, columns, rows, total, empty } = props;
  if (rows.length === 0 && empty) return <>{empty}</>;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard (WCAG 2.1.1).
    <section className="ruled-table-frame" tabIndex={0} aria-label={caption}>
      <table className="ruled-table">
        <caption className={isCaptionHidden ? "visually-hidden" : undefined}>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.id} scope="col" data-align={column.align}>
                {column.title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <RowCells columns={columns} cells={row.cells} />
            </tr>
          ))}
        </tbody>
        {total && (
          <tfoot>
            <tr>
              <RowCells columns={columns} cells={total} />
            </tr>
          </tfoot>
        )}
      </table>
    </section>
  );
}

interface RowCellsProps {
  readonly columns: readonly Column[];
  readonly cells: Readonly<Record<string, ReactNode>>;
}

function RowCells({ columns, cells }: RowCellsProps) {
  return columns.map((column, index) =>
    index === 0 ? (
      <th key={column.id} scope="row" data-align={column.align}>
        {cells[column.id]}
      </th>
    ) : (
      <td key={column.id} data-align={column.align}>
        {cells[column.id]}
      </td>
    ),
  );
}
