import type { ChainLink, ChainPath } from "./chain-types";

export interface PlacedPath {
  readonly path: ChainPath;
  readonly links: readonly { readonly link: ChainLink; readonly column: number }[];
  /** The column at whose right edge the path turns up into the first. */
  readonly joinColumn: number | null;
}

export interface ChainLayout {
  readonly columns: number;
  readonly paths: readonly PlacedPath[];
}

/**
 * Columns, counted from 1, such that every side path ends just before the link it runs into, and the first
 * path moves right where a side path is longer than the way to that link.
 */
export function chainLayout(paths: readonly ChainPath[]): ChainLayout {
  const [main, ...sides] = paths;
  if (!main) return { columns: 0, paths: [] };
  const joinIndex = (side: ChainPath) => main.links.findIndex((link) => link.id === side.joinsBefore);
  const shift = Math.max(
    0,
    ...sides.filter((side) => joinIndex(side) >= 0).map((side) => side.links.length - joinIndex(side)),
  );
  const placed: PlacedPath[] = [
    {
      path: main,
      links: main.links.map((link, index) => ({ link, column: shift + index + 1 })),
      joinColumn: null,
    },
    ...sides.map((side) => placeSide(side, shift, joinIndex(side))),
  ];
  const columns = Math.max(...placed.flatMap(({ links }) => links.map((link) => link.column)), 0);
  return { columns, paths: placed };
}

function placeSide(side: ChainPath, shift: number, joinIndex: number): PlacedPath {
  if (joinIndex < 0) {
    return {
      path: side,
      links: side.links.map((link, index) => ({ link, column: index + 1 })),
      joinColumn: null,
    };
  }
  const end = shift + joinIndex;
  const first = end - side.links.length + 1;
  return {
    path: side,
    links: side.links.map((link, index) => ({ link, column: first + index })),
    joinColumn: end,
  };
}

/** How far the bar reaches when all that there is, is asked: a fifth is left to show what is asked beyond. */
export const FULL_SHARE = 0.8;

/** A share as a part of the bar's width, never past its end. */
export function alongBar(share: number): number {
  return Math.min(Math.max(share, 0) * FULL_SHARE, 1);
}
