/**
 * Speed each symbol stands for, in km/h. The letters are not in order of speed: H lies between U and V.
 *
 * @source UN R30, UN R54 and ISO 4000-1; A1 to A7, C to K, M, P and R from memory. "(Y)" means above
 *         300 km/h, so the maker must be asked.
 */
const SPEED_KMH: ReadonlyMap<string, number> = new Map([
  ["A1", 5],
  ["A2", 10],
  ["A3", 15],
  ["A4", 20],
  ["A5", 25],
  ["A6", 30],
  ["A7", 35],
  ["A8", 40],
  ["B", 50],
  ["C", 60],
  ["D", 65],
  ["E", 70],
  ["F", 80],
  ["G", 90],
  ["J", 100],
  ["K", 110],
  ["L", 120],
  ["M", 130],
  ["N", 140],
  ["P", 150],
  ["Q", 160],
  ["R", 170],
  ["S", 180],
  ["T", 190],
  ["U", 200],
  ["H", 210],
  ["V", 240],
  ["W", 270],
  ["Y", 300],
  ["(Y)", 300],
]);

/** Highest speed of a tyre with the symbol, in km/h; null for a symbol that does not exist. */
export function speedSymbolKmh(symbol: string): number | null {
  return SPEED_KMH.get(symbol) ?? null;
}
