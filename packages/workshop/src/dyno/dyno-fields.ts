import { aspirations } from "@buildproof/engineering";
import { z } from "zod";

export const dynoKinds = ["baseline", "step", "proof"] as const;
export type DynoKind = (typeof dynoKinds)[number];

/** The codes offered for a new session, by the name they are asked for. Superseded ones are not offered. */
export const dynoCodes = {
  "SAE_J1349:AUG2004": { standard: "SAE_J1349", edition: "AUG2004", words: "SAE J1349 (AUG2004)" },
  "UN_R85:R85": { standard: "UN_R85", edition: "R85", words: "UN R85" },
} as const;

export type DynoCode = keyof typeof dynoCodes;

/** What makes runs comparable at all: the gear, and a converter that does not slip. */
export const gears = {
  "locked-converter": "nearest 1:1, converter locked",
  "closed-clutch": "nearest 1:1, clutch closed",
  other: "another gear, or the converter not locked",
} as const;

export type GearChoice = keyof typeof gears;

/** What is read off and typed in, each with the limits that form and use case hold it to. */
export const setUpReadings = {
  barometerKPa: { name: "barometer", unit: "kPa", low: 60, high: 110 },
  airTempC: { name: "air temperature at the inlet", unit: "°C", low: -20, high: 60 },
  relativeHumidityPct: { name: "relative humidity", unit: "per cent", low: 0, high: 100 },
  gearRatio: {
    name: "ratio of the gear",
    unit: "turns of the engine for one behind the gearbox",
    low: 0.4,
    high: 6,
  },
  finalDrive: { name: "final drive", unit: "turns for one of the hubs", low: 1, high: 12 },
  gearboxOilTempC: { name: "gearbox-oil temperature", unit: "°C", low: 0, high: 160 },
  rampRpmPerS: { name: "ramp rate", unit: "rpm/s", low: 20, high: 2_000 },
  fuelMgPerLPerCycle: { name: "fuel per litre and cycle", unit: "mg", low: 1, high: 300 },
  boostRatio: { name: "charge pressure ratio", unit: "absolute pressures", low: 0.5, high: 6 },
} as const;

export type SetUpReading = keyof typeof setUpReadings;

function reading(which: SetUpReading, hint = "") {
  const { name, unit, low, high } = setUpReadings[which];
  const sentence = `Enter the ${name} in ${unit}, from ${low} to ${high}.${hint}`;
  return z.number(sentence).min(low, sentence).max(high, sentence);
}

/** What the operator reads off and types in before a log is taken. */
export const setUpFields = {
  kind: z.enum(dynoKinds, "Say whether it is a baseline, a step or a proof."),
  vehicleId: z.uuid("Open the vehicle's dyno page again and import from there."),
  jobId: z.uuid("Open the job's dyno page again and import from there.").optional(),
  code: z.enum(
    Object.keys(dynoCodes) as [DynoCode, ...DynoCode[]], // The keys are the codes.
    "Choose the code to correct to.",
  ),
  aspiration: z.enum(aspirations, "Say how the engine takes in its air for these runs."),
  barometerKPa: reading("barometerKPa", " It is the station pressure in the cell; 992 hPa are 99.2 kPa."),
  airTempC: reading("airTempC"),
  relativeHumidityPct: reading("relativeHumidityPct"),
  gear: z.enum(Object.keys(gears) as [GearChoice, ...GearChoice[]], "Say which gear the runs were made in."),
  gearRatio: reading("gearRatio"),
  finalDrive: reading("finalDrive"),
  gearboxOilTempC: reading("gearboxOilTempC"),
  rampRpmPerS: reading("rampRpmPerS"),
  fuelMgPerLPerCycle: reading("fuelMgPerLPerCycle").optional(),
  boostRatio: reading("boostRatio").optional(),
  note: z.string().trim().max(1_000, "Keep the note under 1,000 characters.").default(""),
};

export const dynoSetUp = z.strictObject(setUpFields);
export type DynoSetUp = z.output<typeof dynoSetUp>;

/** Where corrected figures hold, as every plot and table says it. */
export function codeWords(standard: string, edition: string): string {
  const name = standard.replaceAll("_", " ");
  return standard === "UN_R85" || edition === "" ? name : `${name} (${edition})`;
}
