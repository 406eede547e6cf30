/** Property classes of steel bolts. */
export const propertyClasses = ["4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"] as const;
export type PropertyClass = (typeof propertyClasses)[number];

const PROOF_STRESS_MPA: Readonly<Record<PropertyClass, number>> = {
  "4.6": 225,
  "4.8": 310,
  "5.6": 280,
  "5.8": 380,
  "6.8": 440,
  "8.8": 580,
  "9.8": 650,
  "10.9": 830,
  "12.9": 970,
};

/**
 * Stress under proof load, in MPa (N/mm²). Class 8.8 is stronger above 16 mm.
 *
 * @source  ISO 898-1; classes below 8.8 and 9.8 from memory.
 * @vectors shared/reference/bolt-torque.json
 */
export function proofStress(propertyClass: PropertyClass, diameterMm: number): number {
  return propertyClass === "8.8" && diameterMm > 16 ? 600 : PROOF_STRESS_MPA[propertyClass];
}
