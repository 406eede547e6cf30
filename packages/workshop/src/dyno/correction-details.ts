import {
  type Aspiration,
  aspirations,
  type Correction,
  type CorrectionEdition,
  type CorrectionQuestion,
  type CorrectionStandard,
  correctionEditions,
  correctionFormula,
  correctionLimits,
  correctionStandards,
  dynoCorrection,
  explainCorrectionWarning,
} from "@buildproof/engineering";
import { codeWords } from "./dyno-fields";
import { limitedEngine } from "./limit-readings";
import type { MeasuredEngine } from "./measured-engine";
import { sessionFigures } from "./session-figures";
import type { SessionRecord } from "./session-record";

/** How a session's factor came about, and what other codes would make of the same runs. */
export type CorrectionDetails = {
  readonly formula: string;
  readonly vapourPressureKPa: number;
  readonly dryPressureKPa: number;
  readonly limits: readonly CorrectionLimit[];
  readonly warnings: readonly string[];
  readonly others: readonly OtherCode[];
};

export type CorrectionLimit = {
  readonly name: string;
  readonly unit: string;
  readonly decimals: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly isWithin: boolean;
};

export type OtherCode = {
  readonly code: string;
  readonly factor: number;
  readonly peakKw: number | null;
  readonly isAllowed: boolean;
  readonly isSuperseded: boolean;
};

type Code = readonly [CorrectionStandard, CorrectionEdition | undefined];

const sparkCodes: readonly Code[] = [
  ["SAE_J1349", "AUG2004"],
  ["SAE_J1349", "JUN1990"],
  ["UN_R85", "R85"],
  ["DIN_70020", undefined],
  ["SAE_J607", undefined],
];
/** The others do not serve compression ignition at all. */
const compressionCodes: readonly Code[] = [
  ["UN_R85", "R85"],
  ["UN_R85", "ISO1585"],
];

/** Null where a session does not say enough to work its factor out again. */
export function correctionDetails(session: SessionRecord, engine: MeasuredEngine): CorrectionDetails | null {
  const [standard, edition] = codeOfSession(session);
  const air = airOf(session, engine);
  if (!standard || !air) return null;
  const own = dynoCorrection({ ...air, standard, edition });
  const peak = sessionFigures(session).observedPeakPower;
  const codes = engine.ignition === "spark" ? sparkCodes : compressionCodes;
  return {
    formula: correctionFormula(standard, own.edition, engine.ignition),
    vapourPressureKPa: own.vapourPressureKPa,
    dryPressureKPa: own.dryPressureKPa,
    limits: limitsOf(own, session, engine),
    warnings: own.warnings.map(explainCorrectionWarning),
    others: codes
      .filter(([other, its]) => other !== standard || its !== edition)
      .map(([other, its]) =>
        otherCode(dynoCorrection({ ...air, standard: other, edition: its }), peak?.value),
      ),
  };
}

function otherCode(made: Correction, observedPeakKw: number | undefined): OtherCode {
  return {
    code: codeWords(made.standard, made.edition ?? ""),
    factor: made.factor,
    peakKw: observedPeakKw === undefined ? null : observedPeakKw * made.factor,
    isAllowed: made.valid,
    isSuperseded: made.warnings.includes("superseded"),
  };
}

function codeOfSession({ standard, edition }: SessionRecord): Code | readonly [null, undefined] {
  const known = correctionStandards.find((each) => each === standard);
  return known ? [known, correctionEditions.find((each) => each === edition)] : [null, undefined];
}

type Air = Omit<CorrectionQuestion, "standard" | "edition">;

function airOf(session: SessionRecord, engine: MeasuredEngine): Air | null {
  const { barometerKPa, airTempC, relativeHumidityPct, fuelMgPerLPerCycle, boostRatio } = session;
  const { ignition } = engine;
  const air = {
    ignition,
    aspiration: aspirationOf(session, engine),
    barometerKPa,
    airTempC,
    relativeHumidityPct,
  };
  if (ignition === "spark") return air;
  if (fuelMgPerLPerCycle === null) return null;
  return { ...air, fuelMgPerLPerCycle, ...(boostRatio === null ? {} : { boostRatio }) };
}

/** As it was entered; else by what the runs show. */
function aspirationOf(session: SessionRecord, engine: MeasuredEngine): Aspiration {
  const entered = aspirations.find((each) => each === session.aspiration);
  if (entered) return entered;
  const isBlown = engine.standardAspiration === "natural" && limitedEngine(engine, session).isBoosted;
  return isBlown ? "mechanical" : engine.standardAspiration;
}

function limitsOf(
  { standard, dryPressureKPa, factor }: Correction,
  { airTempC }: SessionRecord,
  { ignition }: MeasuredEngine,
): readonly CorrectionLimit[] {
  const { tempC, dryKPa, factor: factors } = correctionLimits(standard, ignition);
  const asked = [
    { name: "Air at the inlet", unit: "°C", decimals: 1, value: airTempC, band: tempC },
    { name: "Dry pressure", unit: "kPa", decimals: 2, value: dryPressureKPa, band: dryKPa },
    { name: "Factor", unit: "", decimals: 4, value: factor, band: factors },
  ];
  return asked.flatMap(({ band, ...limit }) => {
    if (!band) return [];
    const [low, high] = band;
    return [{ ...limit, low, high, isWithin: limit.value >= low && limit.value <= high }];
  });
}
