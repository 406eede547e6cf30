import { type BlowerQuestion, blower, fuelHeadroom, powerForecast } from "@buildproof/engineering";
import {
  curvedDisplacement,
  leakyDisplacement,
  sampleBlower,
  samplePump,
} from "@buildproof/engineering/samples";
import { boltTorquePlot, gearingPlot } from "./chassis-plots";
import { headroomPlot, labourPlot, modelYearPlot, powerUnitsPlot, taxRoundingPlot } from "./desk-plots";
import { correctionPlot, smoothingPlot } from "./dyno-plots";
import { type LinePlot, linePlot } from "./line-plot";
import { planningPlot } from "./planning-plots";
import { accelerationPlot, speedometerPlot } from "./road-plots";

/** The invented demo wagon with the larger blower, as the pages' own examples have it. */
const speedsRpm = Array.from({ length: 41 }, (_, at) => 2_000 + at * 100);
const wagon: BlowerQuestion = { ...sampleBlower, blower: curvedDisplacement, speedsRpm };

const speedAxis = { label: "engine speed, rpm", ticks: [2_000, 3_000, 4_000, 5_000, 6_000] };

/** The plots of docs/engineering by file name. */
export function engineeringPlots(): ReadonlyMap<string, string> {
  return new Map([
    ["boost.svg", linePlot(boostPlot())],
    ["fuel-headroom.svg", linePlot(fuelPlot())],
    ["power-forecast.svg", linePlot(forecastPlot())],
    ["acceleration.svg", linePlot(accelerationPlot())],
    ["speedometer.svg", linePlot(speedometerPlot())],
    ["dyno-correction.svg", linePlot(correctionPlot())],
    ["dyno-run.svg", linePlot(smoothingPlot())],
    ["bolt-torque.svg", linePlot(boltTorquePlot())],
    ["gearing.svg", linePlot(gearingPlot())],
    ["power-units.svg", linePlot(powerUnitsPlot())],
    ["model-year.svg", linePlot(modelYearPlot())],
    ["labour.svg", linePlot(labourPlot())],
    ["tax-rounding.svg", linePlot(taxRoundingPlot())],
    ["headroom.svg", linePlot(headroomPlot())],
    ["planning.svg", linePlot(planningPlot())],
  ]);
}

function boostPlot(): LinePlot {
  const centrifugal: BlowerQuestion = {
    ...wagon,
    blower: {
      kind: "centrifugal",
      designSpeedRpm: 40_000,
      designPressureRatio: 1.65,
      adiabaticEfficiency: 0.72,
      maxSpeedRpm: 50_000,
    },
    drive: { ...wagon.drive, internalRatio: 3.5 },
  };
  const boost = (question: BlowerQuestion) =>
    blower(question).points.map(({ speedRpm, boostKPa }) => [speedRpm, boostKPa] as const);
  return {
    title: "Boost over speed",
    x: speedAxis,
    y: { label: "boost, kPa", ticks: [-20, 0, 20, 40, 60, 80, 100] },
    lines: [
      { label: "displacement", points: boost(wagon) },
      { label: "leaking", points: boost({ ...wagon, blower: leakyDisplacement }), dash: "1 3" },
      { label: "without cooler", points: boost({ ...wagon, chargeCooler: null }), dash: "8 4" },
      { label: "centrifugal", points: boost(centrifugal), dash: "2 4" },
    ],
  };
}

function fuelPlot(): LinePlot {
  const { points: air } = blower(wagon);
  const sweepLambda = [
    { speedRpm: 3_000, value: 0.88 },
    { speedRpm: 6_000, value: 0.8 },
  ];
  const { sweep, sustained } = fuelHeadroom({
    fuel: "petrol",
    stages: [samplePump],
    air,
    sweepLambda,
    sustainedLambda: 0.77,
  });
  return {
    title: "Fuel asked for and fuel passed",
    x: speedAxis,
    y: { label: "kg/h", ticks: [0, 40, 80, 120, 160] },
    lines: [
      {
        label: "held load asks",
        points: sustained.points.map((at) => [at.speedRpm, at.demandKgPerH]),
        dash: "8 4",
      },
      { label: "sweep asks", points: sweep.points.map((at) => [at.speedRpm, at.demandKgPerH]) },
      { label: "pump passes", points: sweep.points.map((at) => [at.speedRpm, at.supplyKgPerH]), dash: "2 4" },
    ],
  };
}

function forecastPlot(): LinePlot {
  const { points, hotDay } = powerForecast({
    baseline: {
      at: "hubs",
      points: [
        { speedRpm: 2_000, powerKw: 90 },
        { speedRpm: 3_000, powerKw: 150 },
        { speedRpm: 4_000, powerKw: 205 },
        { speedRpm: 5_000, powerKw: 245 },
        { speedRpm: 6_000, powerKw: 261 },
      ],
    },
    compressionRatio: 11,
    fuel: "petrol",
    injection: "direct",
    blower: wagon,
    fuelSupply: { stages: [samplePump] },
    hotDay: { tempC: 45, pressureKPa: 98 },
  });
  return {
    title: "Forecast at the hubs, with its band",
    x: speedAxis,
    y: { label: "kW", ticks: [0, 100, 200, 300, 400] },
    band: {
      low: points.map((at) => [at.speedRpm, at.lowKw]),
      high: points.map((at) => [at.speedRpm, at.highKw]),
    },
    lines: [
      { label: "expected", points: points.map((at) => [at.speedRpm, at.expectedKw]) },
      {
        label: "hot day",
        points: (hotDay?.points ?? []).map((at) => [at.speedRpm, at.expectedKw]),
        dash: "8 4",
      },
      { label: "baseline", points: points.map((at) => [at.speedRpm, at.baselineKw]), dash: "2 4" },
    ],
  };
}
