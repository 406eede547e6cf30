import { createReadStream } from "node:fs";
import { readFile } from "node:fs/promises";
import { readDynoLog } from "@buildproof/documents";
import { dynoCorrection, gain, type ReducedRun, runAccumulator, verdict } from "@buildproof/engineering";
import { describe, expect, test } from "vitest";
import { demoLogs } from "./demo-logs";
import { type MadeLogOrder, makeDynoLog, warmAfternoon } from "./make-dyno-log";

const factor = dynoCorrection({
  standard: "SAE_J1349",
  ignition: "spark",
  aspiration: "natural",
  ...warmAfternoon,
}).factor;

async function reduced(stream: AsyncIterable<Uint8Array>, correction = factor): Promise<ReducedRun[]> {
  const runs = new Map<string, ReturnType<typeof runAccumulator>>();
  const result = await readDynoLog(stream, (row) => {
    const run = runs.get(row.run) ?? runAccumulator({ factor: correction });
    runs.set(row.run, run);
    run.add(row);
  });
  if (!result.ok) throw new Error(result.refusal.sentence);
  return [...runs.values()].map((run) => {
    const finished = run.finish();
    if (!finished.ok) throw new Error(finished.refusal.code);
    return finished.value;
  });
}

async function* bytesOf(text: string) {
  yield new TextEncoder().encode(text);
}

const made = (order: MadeLogOrder, correction = factor) => reduced(bytesOf(makeDynoLog(order)), correction);
const shipped = (name: string) => new URL(`../../../shared/demo-logs/${name}`, import.meta.url);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const peakKw = (runs: readonly ReducedRun[]) => mean(runs.map((run) => run.peakPower.value));
const peakNm = (runs: readonly ReducedRun[]) => mean(runs.map((run) => run.peakTorque.value));

/* Invented vehicles: the figures guard the demo, they are no outside check. */
describe("the shipped logs", () => {
  test.each(Object.entries(demoLogs))(
    "%s is what the generator makes, and not a small file",
    async (name, order) => {
      const text = await readFile(shipped(name), "utf8");
      expect(text).toBe(makeDynoLog(order));
      expect(text.split("\n").length).toBeGreaterThan(20_000);
      expect(text.length).toBeLessThan(6_000_000);
    },
  );

  test("the Ridgewold makes about 261 kW and 499 N·m at the hubs before, and keeps the Long Grade promise after", async () => {
    const baseline = await reduced(createReadStream(shipped("ridgewold-baseline.csv")));
    const proof = await reduced(createReadStream(shipped("ridgewold-proof.csv")));
    expect(baseline).toHaveLength(3);
    expect(Math.abs(peakKw(baseline) - 261)).toBeLessThan(1.5);
    expect(Math.abs(peakNm(baseline) - 499)).toBeLessThan(3);
    expect(peakKw(proof)).toBeGreaterThan(360);
    expect(peakKw(proof)).toBeLessThan(372);
    expect(verdict({ lowKw: 325, highKw: 375 }, proof)).toMatchObject({
      outcome: "kept",
      repeatability: { repeatable: true },
    });
    expect(gain(baseline, proof)?.peakPowerPct).toBeGreaterThan(35);
    expect([...baseline, ...proof].flatMap((run) => run.warnings)).toEqual([]);
    expect(Math.abs((proof[0]?.channels.boostKPa?.greatest.value ?? 0) - 64.1)).toBeLessThan(1);
  });

  test("the soak, the coast and the pick-up's spikes are left out of the curve", async () => {
    const [run] = await reduced(createReadStream(shipped("ridgewold-proof.csv")));
    expect(run?.excluded["not-driving"]).toBeGreaterThan(500);
    expect(run?.excluded["outside-sweep"]).toBeGreaterThan(1_000);
    expect(run?.excluded["speed-spike"]).toBeGreaterThan(0);
    expect(Math.abs((run?.rampRpmPerS ?? 0) - 400)).toBeLessThan(15);
  });
});

describe("logs for the history", () => {
  test.each([
    ["orrismere-gt44", "baseline", 217, factor],
    ["orrismere-gt44", "proof", 290, factor],
    ["vale-30td", "baseline", 111, 1],
    ["vale-30td", "proof", 132, 1],
  ] as const)("%s %s makes about %i kW", async (model, kind, kw, correction) => {
    expect(Math.abs(peakKw(await made({ seed: 9, model, kind }, correction)) - kw)).toBeLessThan(4);
  });

  test("one seed is one log, another seed another", () => {
    const order = { seed: 1, model: "vale-30td", kind: "baseline", runs: 1, hz: 50 } as const;
    expect(makeDynoLog(order)).toBe(makeDynoLog(order));
    expect(makeDynoLog({ ...order, seed: 2 })).not.toBe(makeDynoLog(order));
  });

  test("a weaker vehicle measures weaker by as much", async () => {
    const [strong, weak] = await Promise.all(
      [1, 0.95].map((level) => made({ seed: 3, model: "ridgewold-57", kind: "baseline", level })),
    );
    expect(peakKw(weak ?? []) / peakKw(strong ?? [])).toBeCloseTo(0.95, 2);
  });
});
