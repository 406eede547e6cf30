import { describe, expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import { dynoTrial, shippedLines, shippedLog, streamOf } from "../testing/dyno-trial";
import { countRunAgain } from "./exclude-run";
import { showJobDyno } from "./show-job";
import { showVehicleDyno } from "./show-vehicle";

const trial = demoWorkshop();
const dyno = dynoTrial(trial);

/** Half way through its blower, with a baseline from before the ratio was asked for. */
const BLOWER = "7SV 5NB";
const UNMEASURED = "1AB 2CD";

const ENGINE_RPM = 2;
const HUB_RPM = 3;

/** The shipped proof with other speeds of the hubs. */
function withHubs(hubsOf: (engineRpm: number, run: string) => number | null): string {
  const [header = "", ...rows] = shippedLines("proof");
  const changed = rows.map((line) => {
    const fields = line.split(",");
    const hubRpm = hubsOf(Number(fields[ENGINE_RPM]), fields[0] ?? "");
    if (hubRpm !== null) fields[HUB_RPM] = hubRpm.toFixed(1);
    return fields.join(",");
  });
  return [header, ...changed].join("\n");
}

async function prove(log: AsyncIterable<Uint8Array>, change: object = {}) {
  const { proofOf, jobId } = await dyno.ids(BLOWER);
  const result = await dyno.import("technician", { ...proofOf, ...change }, log);
  if (!result.ok) throw new Error(result.refusal.sentence);
  return trial.done("technician", showJobDyno, { jobId });
}

describe("engine and hubs", () => {
  test("that keep to gear and final drive are said to, run by run", async () => {
    const { proof } = await prove(shippedLog("proof"));
    expect(proof).toMatchObject({ gearRatio: 1, finalDrive: 3.36 });
    for (const run of proof?.runs ?? []) expect(Math.abs(run.slipPct ?? 9)).toBeLessThan(1);
  });

  test("that part while the converter is open make the run void, and nobody may count it again", async () => {
    const open = (rpm: number, run: string) =>
      run === "2" && rpm < 2_800 ? rpm / (3.36 * (1 + (2_800 - rpm) / 8_000)) : null;
    const { proof, weighed } = await prove(streamOf(withHubs(open)));
    const run = proof?.runs[1];
    expect(run?.excludedBecause).toMatch(/^Void: Engine and hubs differ from 3\.36 to 1 by \d+\.\d % at/);
    expect(run?.isBarred).toBe(true);
    expect(proof?.figures.runs).toBe(2);
    expect(weighed?.outcome).toBe("notDemonstrated");
    const again = { runId: run?.id, reason: "It sounded locked to me." };
    expect(await trial.refused("technician", countRunAgain, again)).toMatchObject({
      code: "run-void",
      sentence: expect.stringMatching(/^This run is void.*converter locked\.$/),
    });
  });

  test("that turn at another ratio in one run make that run void", async () => {
    const { proof } = await prove(
      streamOf(withHubs((rpm, run) => (run === "3" ? rpm / (3.36 * 0.86) : null))),
    );
    expect(proof?.runs[2]?.excludedBecause).toMatch(/^Void: The engine turns 2\.89 times for one turn/);
    expect(proof?.figures.runs).toBe(2);
  });

  test("that turn at another ratio in every run are a matter of what was typed, and nothing is kept", async () => {
    const { proofOf, vehicleId } = await dyno.ids(BLOWER);
    const kept = async () => (await trial.done("technician", showVehicleDyno, { vehicleId })).sessions.length;
    const before = await kept();
    const result = await dyno.import("technician", { ...proofOf, finalDrive: 4.1 }, shippedLog("proof"));
    expect(result).toMatchObject({
      ok: false,
      refusal: {
        code: "another-ratio",
        field: "gearRatio",
        sentence: expect.stringMatching(/turns 3\.36 times .* where gear and final drive make 4\.10/),
      },
    });
    expect(await kept()).toBe(before);
  });

  test("that the log does not carry leave open whether anything slipped, which is said", async () => {
    const without = shippedLines("baseline")
      .map((line) => line.split(",").toSpliced(HUB_RPM, 1).join(","))
      .join("\n")
      // Torque at the speed of the hubs is not torque at that of the engine.
      .replace("hub_torque_nm", "unknown");
    const { vehicleId } = await dyno.ids(UNMEASURED);
    const result = await dyno.import("technician", { kind: "baseline", vehicleId }, streamOf(without));
    expect(result).toMatchObject({
      ok: true,
      value: { warnings: expect.arrayContaining([expect.stringMatching(/no speed of the hubs/)]) },
    });
  });
});

test("a gear of 2.15 is not taken for the one nearest 1:1, but may be named as another", async () => {
  const { vehicleId } = await dyno.ids(UNMEASURED);
  const setUp = { kind: "baseline", vehicleId, gearRatio: 2.15 };
  const result = await dyno.import("technician", setUp, streamOf("never read"));
  expect(result).toMatchObject({ ok: false, refusal: { code: "gear-not-near-one", field: "gearRatio" } });
  const other = await dyno.import("technician", { ...setUp, gear: "other" }, streamOf("read"));
  expect(other).toMatchObject({ ok: false, refusal: { code: "log-refused" } });
});

describe("a gain is not comparable, and says why", () => {
  const cases: readonly (readonly [string, object, RegExp])[] = [
    ["with cold gearbox oil", { gearboxOilTempC: 45 }, /^Gearbox oil at \d+ °C before and 45 °C after/],
    ["with another ramp", { rampRpmPerS: 250 }, /^Ramp of \d+ rpm\/s before and 250 after/],
    ["in another gear", { gear: "other" }, /^Before: nearest 1:1, converter locked; after: another gear/],
  ];
  test.each(cases)("%s", async (_, change, sentence) => {
    const log = `${shippedLines("proof").join("\n")}${"\n".repeat(2 + cases.findIndex(([, each]) => each === change))}`;
    const { comparison } = await prove(streamOf(log), change);
    expect(comparison?.obstacles.some((each) => sentence.test(each))).toBe(true);
  });

  test("and is where all of it is the same", async () => {
    const baselineRamp = (await prove(streamOf(`${shippedLines("proof").join("\n")}\n\n\n\n\n\n`))).baseline;
    const { rampRpmPerS, gearboxOilTempC } = baselineRamp ?? {};
    const log = streamOf(`${shippedLines("proof").join("\n")}\n\n\n\n\n\n\n`);
    const { comparison } = await prove(log, { rampRpmPerS, gearboxOilTempC });
    expect(comparison?.obstacles).toEqual([]);
  });
});
