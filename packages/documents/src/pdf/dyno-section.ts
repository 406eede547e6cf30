import { type Curve, drawCurveFigure } from "./curve-figure";
import { dateInWords, figure, wholeNumber } from "./document-words";
import type { DynoFigures, MeasuredState } from "./dyno-figures";
import { promiseInWords } from "./promise-words";
import { ruledTable } from "./ruled-table";
import { ink, size } from "./sheet-style";
import type { SheetWriter } from "./sheet-writer";

/** The verdict, both curves, and the conditions that they were measured under. */
export function writeDynoSection(sheet: SheetWriter, dyno: DynoFigures): void {
  sheet.paragraph(dyno.verdict, { face: "bold", size: 11 });
  if (dyno.promise !== undefined)
    sheet.paragraph(`Promised: ${promiseInWords({ at: dyno.at, ...dyno.promise })}.`);
  if (dyno.obstacles !== undefined && dyno.obstacles.length > 0)
    sheet.paragraph(`Before and after are not comparable. ${dyno.obstacles.join(" ")}`);
  drawCurves(sheet, dyno);
  const states = [
    ...(dyno.baseline === undefined ? [] : [{ name: "Before", state: dyno.baseline }]),
    { name: "After", state: dyno.proof },
  ];
  ruledTable(
    sheet,
    [
      { heading: "", share: 34 },
      ...states.map(({ name }) => ({ heading: name, share: 33, align: "right" as const })),
    ],
    rowsOf.map(([word, say]) => ({ cells: [word, ...states.map(({ state }) => say(state))] })),
  );
  sheet.paragraph(
    `All figures at the ${dyno.at}, corrected to ${dyno.correction}, smoothed over ${figure(dyno.smoothingRpm, 0)} rpm. Another dyno, other fuel or other air gives other figures; compare gains, not headlines.`,
    { size: size.small, colour: ink.faint },
  );
}

const rowsOf: readonly (readonly [string, (state: MeasuredState) => string])[] = [
  ["Peak power", (state) => `${figure(state.peakPowerKw, 0)} kW at ${wholeNumber(state.peakPowerRpm)} rpm`],
  [
    "Peak torque",
    (state) => `${figure(state.peakTorqueNm, 0)} N·m at ${wholeNumber(state.peakTorqueRpm)} rpm`,
  ],
  ["Runs and their spread", (state) => `${state.runs} runs, ${state.spreadPct.toFixed(1)} %`],
  [
    "Air at the inlet",
    (state) => `${figure(state.airTempC, 1)} °C, ${figure(state.relativeHumidityPct, 0)} % humidity`,
  ],
  ["Barometer", (state) => `${figure(state.barometerKPa, 1)} kPa`],
  ["Correction factor", (state) => state.factor.toFixed(4)],
  ["Measured", (state) => dateInWords(state.measuredOn)],
];

function drawCurves(sheet: SheetWriter, { at, baseline, proof }: DynoFigures): void {
  const after: Curve = {
    label: `after, ${figure(proof.peakPowerKw, 0)} kW`,
    pattern: "solid",
    points: proof.powerKw,
  };
  const before: Curve[] =
    baseline === undefined
      ? []
      : [
          {
            label: `before, ${figure(baseline.peakPowerKw, 0)} kW`,
            pattern: "dashed",
            points: baseline.powerKw,
          },
        ];
  const peak = (state: MeasuredState) =>
    `${figure(state.peakPowerKw, 0)} kW at ${wholeNumber(state.peakPowerRpm)} rpm`;
  drawCurveFigure(sheet, {
    unit: `kW at the ${at}`,
    height: 190,
    curves: [...before, after],
    alt: `Corrected power over engine speed. ${baseline === undefined ? "" : `Before: at most ${peak(baseline)}. `}After: at most ${peak(proof)}.`,
  });
}
