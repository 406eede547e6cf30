import { type AccelerationQuestion, acceleration } from "@buildproof/engineering";
import { unitConvert } from "@buildproof/units";
import { describe, expect, test } from "vitest";
import { type Measured, referenceVectors, unusedVectors } from "./reference-vectors";

type Quantities = Readonly<Record<string, Measured>>;
const vectors = referenceVectors<Quantities, Quantities>("acceleration.json");

function vector(id: string) {
  const found = vectors.find((each) => each.id === id);
  if (!found) throw new Error(`There is no vector ${id}.`);
  return {
    source: found.source,
    given: (name: string) => found.inputs[name]?.value ?? Number.NaN,
    expected: (name: string) => found.expected[name] ?? { value: Number.NaN, tolerance: 0 },
  };
}

function within(
  actual: number | null | undefined,
  { value, tolerance }: { value: number; tolerance: number },
) {
  expect(Math.abs((actual ?? Number.NaN) - value)).toBeLessThanOrEqual(tolerance);
}

/** One gear and the same power at every speed, so that the closed forms hold. */
const constantPower: AccelerationQuestion = {
  massKg: 1600,
  rotatingFactor: 1,
  tyre: "225/45R17",
  gears: [1],
  finalDrive: 3.4,
  shiftTimeS: 0,
  drivelineEfficiency: 0.85,
  rollingCoefficient: 0,
  dragAreaM2: 0,
  airDensityKgPerM3: 0,
  slopePct: 0,
  drivenAxles: "rear",
  gripCoefficient: 0.9,
  curve: [
    { speedRpm: 500, powerKw: 250 },
    { speedRpm: 8000, powerKw: 250 },
  ],
  targetsKmh: [100],
  distancesM: [],
};

describe("closed forms", () => {
  test("constant power without losses takes m·v²/(2P)", () => {
    const { given, expected } = vector("accel-const-power");
    const answer = acceleration({
      ...constantPower,
      massKg: given("m"),
      drivelineEfficiency: 1,
      gripCoefficient: 500,
      gears: [30],
      curve: [
        { speedRpm: 10, powerKw: given("P") },
        { speedRpm: 90_000, powerKw: given("P") },
      ],
    });
    within(answer.times[0]?.s, expected("t"));
  });

  test("constant power over a distance takes the cube root of 9·m·d²/(8P)", () => {
    const { given, expected } = vector("qm-ideal-constants");
    const pounds = 3400;
    const hp = 450;
    const answer = acceleration({
      ...constantPower,
      massKg: unitConvert(pounds, "lb", "kg"),
      drivelineEfficiency: 1,
      gripCoefficient: 500,
      gears: [10],
      curve: [
        { speedRpm: 10, powerKw: unitConvert(hp, "hp", "kW") },
        { speedRpm: 90_000, powerKw: unitConvert(hp, "hp", "kW") },
      ],
      targetsKmh: [],
      distancesM: [given("d")],
    });
    const [passed] = answer.distances;
    const ratio = Math.cbrt(pounds / hp);
    expect((passed?.s ?? Number.NaN) / ratio).toBeCloseTo(expected("ET_const").value, 4);
    expect(unitConvert(passed?.kmh ?? 0, "kmh", "mph") * ratio).toBeCloseTo(expected("trap_const").value, 2);
  });

  test("grip, then constant power: the speed where one gives way to the other, and the time", () => {
    const { given, expected } = vector("accel-traction-then-power");
    const answer = acceleration(constantPower);
    within(answer.times[0]?.s, expected("t"));
    const [grip] = answer.phases;
    expect(grip?.limit).toBe("grip");
    expect((grip?.toS ?? 0) * given("a")).toBeCloseTo(expected("v1").value, 4);
  });

  test.each([
    ["traction-rwd", "rear"],
    ["traction-fwd", "front"],
  ] as const)("%s: load moves to the rear axle", (id, drivenAxles) => {
    const { given, expected } = vector(id);
    const answer = acceleration({
      ...constantPower,
      drivenAxles,
      gripCoefficient: given("mu"),
      frontLoadPct: 100 * (1 - given("a_f") / given("L")),
      gravityHeightToWheelbase: given("h") / given("L"),
      targetsKmh: [10],
    });
    const speedMs = 10 / 3.6;
    within(speedMs / (answer.times[0]?.s ?? Number.NaN) / 9.80665, expected("a_over_g"));
  });

  test.each(["rollout-0.5g", "rollout-1.0g"])("%s: the first 0.3048 m at constant acceleration", (id) => {
    const { given, expected } = vector(id);
    const { rollOut } = acceleration({
      ...constantPower,
      drivenAxles: "all",
      gripCoefficient: given("a") / 9.80665,
      rollOutM: 0.3048,
    });
    within(rollOut?.s, expected("t"));
    within(rollOut?.kmh, expected("v"));
  });

  test.each(["mass-factor-5", "mass-factor-8", "mass-factor-12"])(
    "%s: what turns with the wheels costs time as mass does",
    (id) => {
      const { given, expected } = vector(id);
      const rotatingFactor = 1.04 + 0.0025 * given("Ntf") ** 2;
      within(rotatingFactor, expected("k_m"));
      const powerLimited = {
        ...constantPower,
        gripCoefficient: 500,
        gears: [30],
        curve: [
          { speedRpm: 10, powerKw: 250 },
          { speedRpm: 90_000, powerKw: 250 },
        ],
      };
      const time = (factor: number) =>
        acceleration({ ...powerLimited, rotatingFactor: factor }).times[0]?.s ?? 0;
      // Below the first speed of the curve torque holds, so the closed form is a hair off.
      expect(time(rotatingFactor) / time(1)).toBeCloseTo(expected("k_m").value, 3);
    },
  );

  test("the power that holds a speed is the power of which it is the top speed", () => {
    const { given, expected } = vector("roadload-100");
    const powerKw = expected("P").value;
    const answer = acceleration({
      ...constantPower,
      massKg: given("m"),
      rollingCoefficient: given("Crr"),
      airDensityKgPerM3: given("rho"),
      dragAreaM2: given("CdA"),
      drivelineEfficiency: 1,
      curve: [
        { speedRpm: 200, powerKw },
        { speedRpm: 20_000, powerKw },
      ],
      targetsKmh: [300],
    });
    expect(answer.end.because).toBe("top-speed");
    expect(Math.abs(answer.end.kmh - given("v"))).toBeLessThan(0.05);
    const holds = expected("F_roll").value + expected("F_aero").value;
    expect(answer.trace.at(-1)?.driveN).toBeCloseTo(holds, 0);
  });

  test("top speed is where the power is used up by rolling and air", () => {
    const { given, expected } = vector("vmax");
    const kW = given("P_wheel");
    const answer = acceleration({
      ...constantPower,
      rollingCoefficient: given("A") / (1600 * 9.80665),
      airDensityKgPerM3: 1,
      dragAreaM2: 2 * given("B"),
      drivelineEfficiency: 1,
      curve: [
        { speedRpm: 500, powerKw: kW },
        { speedRpm: 20_000, powerKw: kW },
      ],
      targetsKmh: [300],
    });
    expect(answer.end.because).toBe("top-speed");
    expect(answer.times[0]?.s).toBeNull();
    expect(Math.abs(answer.end.kmh - expected("v").value)).toBeLessThan(0.05);
  });
});

test("the whole model against an independent numerical solution", () => {
  const { given, expected } = vector("accel-full-model");
  const question: AccelerationQuestion = {
    ...constantPower,
    rotatingFactor: given("k_m"),
    rollingCoefficient: given("Crr"),
    airDensityKgPerM3: given("rho"),
    dragAreaM2: given("CdA"),
    distancesM: [402.336],
  };
  const fromRest = acceleration(question);
  within(fromRest.times[0]?.s, expected("t_0_100"));
  within(fromRest.distances[0]?.s, expected("t_quarter_mile"));
  within(fromRest.distances[0]?.kmh, expected("v_trap"));
  const rolledOut = acceleration({ ...question, rollOutM: 0.3048 });
  within(rolledOut.rollOut?.s, expected("t_rollout_1ft"));
  expect((fromRest.times[0]?.s ?? 0) - (rolledOut.times[0]?.s ?? 0)).toBeCloseTo(
    rolledOut.rollOut?.s ?? 0,
    12,
  );
});

test("coasting on a shift loses what rolling and air take", () => {
  const { given, expected } = vector("coastdown-closed-form");
  // Leaves first gear at 120 km/h for a shift that lasts as long as the coast-down to 100 km/h.
  const circumference = (3.05 * 634) / 1000;
  const answer = acceleration({
    ...constantPower,
    massKg: 1600,
    rotatingFactor: given("M") / 1600,
    rollingCoefficient: given("A") / (1600 * 9.80665),
    airDensityKgPerM3: 1,
    dragAreaM2: 2 * given("B"),
    gears: [1, 0.5],
    finalDrive: (8000 * circumference) / 60 / (120 / 3.6),
    shiftTimeS: 10,
    curve: [
      { speedRpm: 500, powerKw: 100 },
      { speedRpm: 8000, powerKw: 250 },
    ],
    targetsKmh: [140],
  });
  const shift = answer.phases.find(({ limit }) => limit === "shift");
  const at = (s: number | undefined) =>
    answer.trace.find((point) => Math.abs(point.s - (s ?? 0)) < 1e-9)?.kmh ?? 0;
  const [from, to] = [at(shift?.fromS) / 3.6, at(shift?.toS) / 3.6];
  expect(from * 3.6).toBeCloseTo(120, 3);
  const [a, b, m] = [given("A"), given("B"), given("M")];
  const time =
    (m / Math.sqrt(a * b)) * (Math.atan(from * Math.sqrt(b / a)) - Math.atan(to * Math.sqrt(b / a)));
  expect(time).toBeCloseTo(10, 4);
  // The vector's own interval by the same closed form.
  const whole = Math.atan((120 / 3.6) * Math.sqrt(b / a)) - Math.atan((100 / 3.6) * Math.sqrt(b / a));
  within((m / Math.sqrt(a * b)) * whole, expected("t"));
});

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe("0-100 km/h on a closed course (common practice, no source)", () => {
  /** Masses, ratios and engine speeds are not given with the times: typical ones, from memory, none tuned. */
  const wagonGears = [4.9, 3.1, 1.98, 1.37, 1, 0.87, 0.78];
  const automatic = { shiftTimeS: 0.15, drivelineEfficiency: 0.85 };
  const wagon = {
    ...automatic,
    gears: wagonGears,
    finalDrive: 3.36,
    drivenAxles: "all",
    dragAreaM2: 1.2,
  } as const;
  const ROWS = [
    [
      "small 4WD, 4-speed automatic",
      15.6,
      { hp: 100, lbft: 96, torqueRpm: 4000, ratedRpm: 6000 },
      {
        ...automatic,
        massKg: 1250,
        tyre: "235/75R15",
        gears: [2.88, 1.57, 1, 0.7],
        finalDrive: 4.3,
        drivenAxles: "all",
        dragAreaM2: 1,
      },
    ],
    [
      "turbo-diesel 4WD wagon, 6-speed automatic",
      10.3,
      { hp: 270, lbft: 480, torqueRpm: 1800, ratedRpm: 3800 },
      {
        ...wagon,
        massKg: 2750,
        tyre: "285/60R18",
        gears: [3.33, 1.96, 1.35, 1, 0.73, 0.59],
        finalDrive: 3.9,
      },
    ],
    [
      "heavy diesel pick-up",
      7.7,
      { hp: 445, lbft: 910, torqueRpm: 1600, ratedRpm: 3000 },
      {
        ...wagon,
        massKg: 3500,
        tyre: "275/70R18",
        gears: [3.1, 1.81, 1.41, 1, 0.71, 0.61],
        finalDrive: 3.73,
      },
    ],
    [
      "V8 wagon on 35-inch tyres",
      8,
      { hp: 400, lbft: 413, torqueRpm: 4000, ratedRpm: 5800 },
      { ...wagon, massKg: 2800, tyre: "35x12.50R18LT" },
    ],
    [
      "the same at 560 hp",
      6.6,
      { hp: 560, lbft: 560, torqueRpm: 4000, ratedRpm: 5800 },
      { ...wagon, massKg: 2800, tyre: "35x12.50R18LT" },
    ],
    [
      "coupe, 6-speed manual",
      5.6,
      { hp: 460, lbft: 420, torqueRpm: 4600, ratedRpm: 7000 },
      {
        massKg: 1800,
        tyre: "275/40R19",
        gears: [3.66, 2.43, 1.69, 1.32, 1, 0.65],
        finalDrive: 3.55,
        shiftTimeS: 0.35,
        drivelineEfficiency: 0.88,
        drivenAxles: "rear",
        dragAreaM2: 0.7,
      },
    ],
    [
      "turbo coupe, 8-speed automatic",
      4.5,
      { hp: 335, lbft: 368, torqueRpm: 1600, ratedRpm: 6500 },
      {
        ...automatic,
        massKg: 1700,
        tyre: "255/35R19",
        gears: [4.7, 3.13, 2.1, 1.67, 1.29, 1, 0.84, 0.67],
        finalDrive: 3.15,
        drivenAxles: "rear",
        dragAreaM2: 0.65,
      },
    ],
  ] as const satisfies readonly (readonly [string, number, EngineFigures, Partial<AccelerationQuestion>])[];

  const errors: number[] = [];
  test.each(ROWS)("%s: %d s within two fifths", (name, seconds, figures, vehicle) => {
    const question: AccelerationQuestion = {
      ...constantPower,
      rotatingFactor: 1.08,
      rollingCoefficient: 0.013,
      airDensityKgPerM3: 1.18,
      gripCoefficient: 0.9,
      ...vehicle,
      curve: curveFrom(figures),
    };
    const ours = acceleration(question).times[0]?.s ?? Number.NaN;
    errors.push(ours / seconds - 1);
    console.info(`${name}: ${ours.toFixed(2)} s against ${seconds} s`);
    expect(Math.abs(ours / seconds - 1)).toBeLessThan(0.4);
  });

  test("over all of them the mean error is under a tenth, the mean size of it under a fifth", () => {
    expect(errors).toHaveLength(ROWS.length);
    expect(Math.abs(mean(errors))).toBeLessThan(0.1);
    expect(mean(errors.map(Math.abs))).toBeLessThan(0.2);
  });
});

type EngineFigures = {
  readonly hp: number;
  readonly lbft: number;
  readonly torqueRpm: number;
  readonly ratedRpm: number;
};

/** Two published figures as a curve: torque from 60 % at 1,000 rpm to its peak, held until it meets the rated power. */
function curveFrom({ hp, lbft, torqueRpm, ratedRpm }: EngineFigures): AccelerationQuestion["curve"] {
  const peakKw = unitConvert(hp, "hp", "kW");
  const peakNm = unitConvert(lbft, "lbft", "Nm");
  const speeds = Array.from({ length: (ratedRpm - 1000) / 100 + 1 }, (_, at) => 1000 + 100 * at);
  return speeds.map((speedRpm) => {
    const share = Math.min(1, 0.6 + (0.4 * (speedRpm - 1000)) / (torqueRpm - 1000));
    return { speedRpm, powerKw: Math.min(peakKw, (share * peakNm * Math.PI * speedRpm) / 30_000) };
  });
}

test("every vector of the file is checked above", () => {
  expect(unusedVectors("acceleration.json")).toEqual([]);
});
