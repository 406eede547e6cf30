// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import { describe, expect, test } from "vitest";
import { calculations } from "../calculations";
import { calculationSchema } from "./calculation-schema";
import { runCalculation, runCalculationText } from "./run-calculation";

const questions: Readonly<Record<string, unknown>> = {
  "unit-convert": { value: 100, from: "kW", to: "hp" },
  vin: { vin: "11111111111111111" },
  abn: { abn: "51 824 753 556" },
  tyre: { designation: "285/65R18 116T" },
  speedometer: {
    indicatedKmh: 100,
    standardTyre: "265/70R17",
    fittedTyre: "285/70R17",
    standardErrorPct: 3,
  },
  "bolt-torque": { thread: "M12", propertyClass: "10.9", preloadPct: 75, frictionK: 0.2 },
  acceleration: {
    massKg: 2700,
    rotatingFactor: 1.08,
    tyre: "275/60R20",
    gears: [4.9, 3.1, 1.98, 1.37, 1, 0.85, 0.67],
    finalDrive: 3.36,
    shiftTimeS: 0.2,
    drivelineEfficiency: 0.85,
    rollingCoefficient: 0.013,
    dragAreaM2: 1.2,
    airDensityKgPerM3: 1.18,
    slopePct: 0,
    drivenAxles: "all",
    gripCoefficient: 0.8,
    curve: [
      { speedRpm: 1000, powerKw: 45 },
      { speedRpm: 4000, powerKw: 220 },
      { speedRpm: 6000, powerKw: 290 },
    ],
    targetsKmh: [100, 400],
    distancesM: [400],
    rollOutM: 0.3048,
  },
  "dyno-correction": {
    standard: "SAE_J1349",
    ignition: "spark",
    aspiration: "natural",
    barometerKPa: 98,
    airTempC: 30,
    relativeHumidityPct: 50,
  },
  blower: {
    engine: { displacementL: 5.7, volumetricEfficiency: 0.98, maxSpeedRpm: 6500 },
    blower: {
      kind: "displacement",
      displacementLPerRev: 2.4,
      volumetricEfficiency: [
        { speedRpm: 3000, value: 0.88 },
        { speedRpm: 6000, value: 0.92 },
      ],
      adiabaticEfficiency: 0.64,
      maxSpeedRpm: 14000,
    },
    drive: { crankPulleyMm: 175, blowerPulleyMm: 92, internalRatio: 1 },
    ambient: { pressureKPa: 100, tempC: 25 },
    chargeCooler: null,
    inletDropKPa: 3,
    speedsRpm: [1000, 6000],
  },
  "fuel-demand": { fuel: "petrol", airMassFlowKgPerS: 0.476, lambda: 0.8 },
  "fuel-supply": {
    fuel: "petrol",
    speedRpm: 6000,
    stages: [
      {
        kind: "tank-pump",
        points: [
          { pressureKPa: 300, flowLPerH: 340 },
          { pressureKPa: 600, flowLPerH: 240 },
        ],
        systemPressureKPa: 500,
      },
      {
        kind: "high-pressure-pump",
        displacementCm3PerCamRev: 1.179,
        volumetricEfficiency: [{ speedRpm: 6000, value: 0.845 }],
      },
    ],
  },
  "power-forecast": {
    baseline: {
      at: "hubs",
      points: [
        { speedRpm: 1500, powerKw: 55 },
        { speedRpm: 3500, powerKw: 130 },
      ],
    },
    compressionRatio: 16.5,
    fuel: "diesel",
    injection: "direct",
    calibrationChange: { torqueRequestNm: 560, smokeLambda: 1.2, exhaustLimitC: 720 },
    torqueCaps: [600, { torqueNm: 580, name: "gearbox" }],
    hotDay: { tempC: 45, pressureKPa: 98 },
    assumptions: { dieselLambda: 1.5 },
  },
  labour: { access: [{ id: "a", hours: 0.1 }], operations: [{ id: "o", hours: "0.2", access: ["a"] }] },
  "quote-totals": {
    currency: "AUD",
    jurisdiction: "AU",
    pricesIncludeTax: false,
    lines: [{ quantity: "1.5", unitPriceMinor: 333, taxCategory: "S" }],
  },
  "prerequisites-check": {
    items: [{ id: "a", price: 1 }],
    groups: [{ id: "g", pick: "exactly-one", items: ["a"] }],
    facts: { f: 1 },
    rules: [
      {
        id: "n",
        kind: "needs",
        when: { not: { any: [{ item: "a" }, { fact: "f", atLeast: 2 }] } },
        then: { all: [] },
        because: "b",
      },
      {
        id: "c",
        kind: "capacity",
        quantity: "kg",
        base: 0,
        supply: {},
        demand: { a: 1 },
        reservePct: 0,
        because: "b",
      },
    ],
    chosen: ["a"],
    barred: [],
    minimise: "price",
  },
  "prerequisites-complete": {
    items: [
      { id: "a", price: 1 },
      { id: "b", price: "2.50" },
    ],
    rules: [{ id: "n", kind: "needs", when: { item: "a" }, then: { item: "b" } }],
    chosen: ["a"],
    minimise: "price",
  },
  plan: {
    resources: [
      {
        id: "hoist",
        capacity: 1,
        open: [
          [0, 480],
          [1440, 1920],
        ],
      },
    ],
    tasks: [
      { id: "teardown", duration: 300, uses: { hoist: 1 }, splittable: true, due: 400, weight: 2 },
      { id: "refit", duration: 200, uses: { hoist: 1 }, after: [{ task: "teardown", lag: 30 }], release: 60 },
    ],
    holds: [{ resource: "hoist", units: 1, from: "teardown", to: "refit", tasks: ["teardown", "refit"] }],
    fixed: { teardown: 0 },
    objective: "makespan",
    effort: { schedules: 10 },
    seed: 3,
  },
};

describe("every calculation", () => {
  test("has a question here", () => {
    expect(Object.keys(questions)).toEqual([...calculations.keys()]);
  });

  test.each(Object.keys(questions))("%s answers in the shape of its schema", async (name) => {
    const answer = await runCalculation(name, questions[name]);
    if (!answer.ok) throw new Error(answer.error.message);
    expect(calculations.get(name)?.output.safeParse(answer.value).error).toBeUndefined();
    // What is printed is what was worked out: no undefined, NaN or bigint is lost on the way.
    expect(JSON.parse(JSON.stringify(answer.value))).toEqual(answer.value);
  });

  test.each(Object.keys(questions))("%s refuses an unknown field by name", async (name) => {
    const answer = await runCalculation(name, { ...(questions[name] as object), colour: "red" });
    expect(answer).toEqual({
      ok: false,
      error: expect.objectContaining({ code: "unknown-field", path: "colour" }),
    });
  });

  test.each(Object.keys(questions))("%s has a JSON Schema of input and output", (name) => {
    const schema = calculationSchema(name);
    expect(schema?.input).toMatchObject({ type: "object", additionalProperties: false });
    expect(schema?.output).toMatchObject({ type: "object" });
  });
});

describe("refusals say where and what to do", () => {
  const check = questions["prerequisites-check"] as Record<string, unknown>;
  test.each([
    ["nope", {}, "unknown-calculation", ""],
    ["__proto__", {}, "unknown-calculation", ""],
    ["vin", [], "invalid-field", ""],
    ["vin", {}, "missing-field", "vin"],
    ["vin", { vin: null }, "invalid-field", "vin"],
    ["unit-convert", { value: 1, from: "kW", to: "Nm" }, "different-dimensions", "to"],
    ["unit-convert", { value: Number.NaN, from: "kW", to: "hp" }, "invalid-field", "value"],
    ["labour", { access: [{ id: "a", hours: -1 }], operations: [] }, "invalid-field", "access[0].hours"],
    [
      "labour",
      { access: [], operations: [{ id: "o", hours: 1, access: ["x"] }] },
      "unknown-id",
      "operations[0].access[0]",
    ],
    [
      "prerequisites-check",
      { ...check, rules: [{ id: "n", kind: "needs", then: { item: "a", colour: 1 } }] },
      "unknown-field",
      "rules[0].then.colour",
    ],
    [
      "prerequisites-check",
      { ...check, rules: [{ id: "n", kind: "needs", then: { all: [{ fact: "f" }] } }] },
      "missing-field",
      "rules[0].then.all[0].atLeast",
    ],
    [
      "prerequisites-check",
      { ...check, rules: [{ id: "n", kind: "likes", then: {} }] },
      "invalid-field",
      "rules[0].kind",
    ],
    [
      "power-forecast",
      { ...(questions["power-forecast"] as object), assumptions: { luck: 1 } },
      "unknown-field",
      "assumptions.luck",
    ],
    [
      "fuel-supply",
      { fuel: "petrol", speedRpm: 6000, stages: [{ kind: "cup" }] },
      "invalid-field",
      "stages[0].kind",
    ],
    ["fuel-demand", { fuel: "petrol", lambda: 0.8 }, "one-way", "airMassFlowKgPerS"],
    ["prerequisites-check", { ...check, chosen: ["zz"] }, "unknown-id", "chosen[0]"],
  ] as const)("%s %j", async (name, input, code, path) => {
    const answer = await runCalculation(name, input);
    expect(answer).toEqual({ ok: false, error: { code, path, message: expect.stringMatching(/[.]$/) } });
  });

  test("text that is not JSON, and no text at all", async () => {
    expect(await runCalculationText("vin", "{")).toMatchObject({ ok: false, error: { code: "not-json" } });
    expect(await runCalculationText("vin", " ")).toMatchObject({ ok: false, error: { code: "not-json" } });
    expect(await runCalculationText("vin", '\uFEFF{"vin":"x"}')).toMatchObject({ ok: true });
  });

  test("a question nested a hundred thousand deep is refused and breaks nothing", async () => {
    const text = `{"items":[],"rules":[{"id":"r","kind":"needs","then":${'{"not":'.repeat(100_000)}{"all":[]}${"}".repeat(100_000)}}]}`;
    expect(await runCalculationText("prerequisites-check", text)).toMatchObject({
      ok: false,
      error: { code: "impossible-shape" },
    });
  });
});

test("a name that would be lost on the way is refused", async () => {
  const text = '{"items":[],"facts":{"__proto__":3}}';
  expect(await runCalculationText("prerequisites-check", text)).toMatchObject({
    error: { code: "impossible-shape" },
  });
});

describe("numbers are the decimals written", () => {
  const capacity = (supply: string) =>
    runCalculationText(
      "prerequisites-check",
      `{"items":[{"id":"p"},{"id":"e"}],"rules":[{"id":"r","kind":"capacity","supply":{"p":${supply}},"demand":{"e":100},"reservePct":10}],"chosen":["p","e"]}`,
    );

  test("even with more digits than a double holds", async () => {
    expect(await capacity("110")).toMatchObject({ value: { ok: true } });
    expect(await capacity("110.000000000000000000001")).toMatchObject({ value: { ok: true } });
    expect(await capacity("109.999999999999999999999")).toMatchObject({ value: { ok: false } });
    expect(await capacity("1.1e2")).toMatchObject({ value: { ok: true } });
  });

  test("and what no double can reach is refused", async () => {
    expect(await capacity("1e400")).toMatchObject({ ok: false, error: { path: "rules[0].supply.p" } });
  });

  test("digits inside texts are left alone", async () => {
    const id = "123456789012345678901234567890";
    const answer = await runCalculationText(
      "labour",
      `{"access":[{"id":"${id}","hours":1}],"operations":[{"id":"o\\"1","hours":1,"access":["${id}"]}]}`,
    );
    expect(answer).toMatchObject({ value: { accessUsed: [id] } });
  });
});
