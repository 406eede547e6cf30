/** Order of the second character in the ranges of ISO 3780. */
const ORDER = "ABCDEFGHJKLMNPRSTUVWXYZ1234567890";

const REGIONS: readonly (readonly [firstCharacters: string, region: string])[] = [
  ["ABCDEFGH", "Africa"],
  ["JKLMNPR", "Asia"],
  ["STUVWXYZ", "Europe"],
  ["12345", "North America"],
  ["67", "Oceania"],
  ["89", "South America"],
];

/** First character, first and last second character. */
const COUNTRIES: readonly (readonly [first: string, from: string, to: string, country: string])[] = [
  ["1", "A", "0", "United States"],
  ["2", "A", "0", "Canada"],
  ["3", "A", "0", "Mexico"],
  ["4", "A", "0", "United States"],
  ["5", "A", "0", "United States"],
  ["6", "A", "W", "Australia"],
  ["7", "A", "E", "New Zealand"],
  ["8", "A", "E", "Argentina"],
  ["9", "A", "E", "Brazil"],
  ["9", "3", "9", "Brazil"],
  ["A", "A", "H", "South Africa"],
  ["J", "A", "0", "Japan"],
  ["K", "L", "R", "South Korea"],
  ["L", "A", "0", "China"],
  ["M", "A", "E", "India"],
  ["M", "F", "K", "Indonesia"],
  ["M", "L", "R", "Thailand"],
  ["P", "A", "E", "Philippines"],
  ["P", "L", "R", "Malaysia"],
  ["S", "A", "M", "United Kingdom"],
  ["S", "U", "Z", "Poland"],
  ["T", "A", "H", "Switzerland"],
  ["T", "R", "V", "Hungary"],
  ["V", "A", "E", "Austria"],
  ["V", "F", "R", "France"],
  ["V", "S", "W", "Spain"],
  ["W", "A", "0", "Germany"],
  ["Y", "A", "E", "Belgium"],
  ["Y", "S", "W", "Sweden"],
  ["Z", "A", "R", "Italy"],
];

/**
 * Continent that ISO 3780 gave the first character to; null where it gave none.
 *
 * @source ISO 3780 allocation, from memory.
 */
export function worldRegion(vin: string): string | null {
  return REGIONS.find(([characters]) => characters.includes(vin.charAt(0)))?.[1] ?? null;
}

/**
 * Country of the first two characters, where known here; null otherwise. It is where the maker is
 * registered, not where the vehicle was built.
 *
 * @source ISO 3780 allocation, from memory.
 */
export function worldCountry(vin: string): string | null {
  const second = ORDER.indexOf(vin.charAt(1));
  const entry = COUNTRIES.find(
    ([first, from, to]) =>
      first === vin.charAt(0) && second >= ORDER.indexOf(from) && second <= ORDER.indexOf(to),
  );
  return entry?.[3] ?? null;
}
