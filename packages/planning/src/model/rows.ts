import type { Rows } from "./problem";

/** Lists of pairs, packed. */
export function rowsOf(lists: readonly (readonly (readonly [item: number, amount: number])[])[]): Rows {
  const start = new Int32Array(lists.length + 1);
  for (const [at, list] of lists.entries()) start[at + 1] = (start[at] ?? 0) + list.length;
  const flat = lists.flat();
  return {
    start,
    item: Int32Array.from(flat, ([item]) => item),
    amount: Float64Array.from(flat, ([, amount]) => amount),
  };
}

/** The pairs of one row. */
export function rowOf({ start, item, amount }: Rows, row: number): readonly (readonly [number, number])[] {
  const pairs: [number, number][] = [];
  for (let at = start[row] ?? 0; at < (start[row + 1] ?? 0); at += 1) {
    pairs.push([item[at] ?? 0, amount[at] ?? 0]);
  }
  return pairs;
}

/** The same pairs seen from the other side: item → row. */
export function turnedRows(rows: Rows, size: number): Rows {
  const lists = Array.from({ length: size }, (): [number, number][] => []);
  for (let row = 0; row + 1 < rows.start.length; row += 1) {
    for (const [item, amount] of rowOf(rows, row)) lists[item]?.push([row, amount]);
  }
  return rowsOf(lists);
}
