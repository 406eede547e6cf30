/** What the desk calls each fuel. */
export const fuelWords = {
  petrol: "Petrol",
  e10: "E10",
  e85: "E85",
  diesel: "Diesel",
} as const;

export const useWords = {
  towing: "Towing",
  touring: "Touring",
  street: "Street",
  track: "Track",
} as const;

/** Octane numbers (RON) that pumps sell, by fuel. Common practice, no source. */
export const octanesAtThePump = {
  petrol: [91, 95, 98],
  e10: [94, 95],
  e85: [105],
  diesel: [],
} as const satisfies Record<keyof typeof fuelWords, readonly number[]>;

/** "Petrol 98", "Diesel". */
export function fuelText(kind: keyof typeof fuelWords, octane: number | null): string {
  return octane === null ? fuelWords[kind] : `${fuelWords[kind]} ${octane}`;
}

export function isFuel(text: string): text is keyof typeof fuelWords {
  return Object.hasOwn(fuelWords, text);
}

export function kilometres(km: number): string {
  return `${new Intl.NumberFormat("en-AU").format(km)} km`;
}
