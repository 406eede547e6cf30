/** Load of index 160 to 239 in kg. Every eighty indices the load grows tenfold. */
const LOAD_KG_FROM_160 = [
  4500, 4625, 4750, 4875, 5000, 5150, 5300, 5450, 5600, 5800, 6000, 6150, 6300, 6500, 6700, 6900, 7100, 7300,
  7500, 7750, 8000, 8250, 8500, 8750, 9000, 9250, 9500, 9750, 10000, 10300, 10600, 10900, 11200, 11500, 11800,
  12150, 12500, 12850, 13200, 13600, 14000, 14500, 15000, 15500, 16000, 16500, 17000, 17500, 18000, 18500,
  19000, 19500, 20000, 20600, 21200, 21800, 22400, 23000, 23600, 24300, 25000, 25750, 26500, 27250, 28000,
  29000, 30000, 30750, 31500, 32500, 33500, 34500, 35500, 36500, 37500, 38750, 40000, 41250, 42500, 43750,
] as const;
const PER_DECADE = LOAD_KG_FROM_160.length;
const HIGHEST_INDEX = 279;

/**
 * Load one tyre may carry at the speed of its symbol, in kg; null for an index that does not exist.
 * Below a tonne the tables keep three digits and drop the rest (75 is 387, not 387.5).
 *
 * @source  ISO 4000-1 and UN R30 Annex 4. Indices 70 to 130 as in public tables; the others by the
 *          tables' own rule (80 steps are a factor of ten), from memory.
 * @vectors shared/reference/tyre.json
 */
export function loadIndexKg(loadIndex: number): number | null {
  if (!Number.isInteger(loadIndex) || loadIndex < 0 || loadIndex > HIGHEST_INDEX) return null;
  const from160 = LOAD_KG_FROM_160[loadIndex % PER_DECADE];
  if (from160 === undefined) return null;
  const decade = Math.floor(loadIndex / PER_DECADE);
  const kg = from160 * 10 ** (decade - 2);
  if (kg < 100) return Math.floor(from160 / 10) / 10;
  return kg < 1000 ? Math.floor(from160 / 10 ** (2 - decade)) : kg;
}
