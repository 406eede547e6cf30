import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { folderFileStore } from "../core/file-store";
import { demoWorkshop } from "../testing/demo-workshop";
import { dynoTrial, shippedLines, shippedLog, streamOf, usualSetUp } from "../testing/dyno-trial";
import { importDynoLog } from "./import-dyno-log";
import { LARGEST_LOG_BYTES } from "./read-upload";
import { showJobDyno } from "./show-job";
import { showVehicleDyno } from "./show-vehicle";

const trial = demoWorkshop();
const dyno = dynoTrial(trial);

/** Vehicles of the demo: never on the dyno, with a job in work, and with one that has not come in yet. */
const UNMEASURED = "1AB 2CD";
const IN_WORK = "7SV 5NB";
const WAITING = "3FR 6TX";

const kept = async () => {
  const [row] = await trial.sql(
    "select (select count(*) from dyno_session)::int as sessions, (select count(*) from dyno_run)::int as runs, (select count(*) from stored_file)::int as files",
  );
  return row;
};

describe("a log that is imported", () => {
  test("gives the baseline its known peaks, corrected by the known factor", async () => {
    const { vehicleId } = await dyno.ids(UNMEASURED);
    const imported = await dyno.import("technician", { kind: "baseline", vehicleId }, shippedLog("baseline"));
    expect(imported).toMatchObject({ ok: true, value: { runs: 3, excluded: 0 } });
    const page = await trial.done("desk", showVehicleDyno, { vehicleId });
    expect(page.baseline).toMatchObject({ passed: true });
    const [session] = page.sessions;
    // shared/demo-logs/README.md states factor, peaks and where they lie; the factor by SAE J1349 (AUG2004).
    expect(session?.factor).toBeCloseTo(1.0257, 4);
    expect(session?.figures.peakPower?.value).toBeCloseTo(261, 0);
    expect(session?.figures.peakTorque?.value).toBeCloseTo(498, -0.5);
    expect(session?.figures.peakPower?.engineRpm).toBeGreaterThan(5_400);
    expect(session?.figures.spreadPct).toBeLessThan(2);
    expect(session).toMatchObject({ rowCount: 22_023, operator: "Tilda Brennock", kind: "baseline" });
    // Common practice: hubs turn slower than the engine; torque is referred to engine speed by P = T·ω.
    const { powerKw, torqueNm, rpm } = pointOf(session);
    expect(torqueNm).toBeCloseTo((powerKw * 60_000) / (2 * Math.PI * rpm), 3);
  });

  test("gives the proof its known peaks and boost, and moves the job to proof", async () => {
    const { jobId, proofOf } = await dyno.ids(IN_WORK);
    const imported = await dyno.import("technician", proofOf, shippedLog("proof"), "C:\\logs\\proof.csv");
    expect(imported.ok).toBe(true);
    const { proof, job } = await trial.done("technician", showJobDyno, { jobId });
    expect(proof?.figures.peakPower?.value).toBeCloseTo(366, -0.5);
    expect(proof?.figures.peakTorque?.value).toBeCloseTo(631, -0.5);
    expect(proof?.figures.peakBoostKPa).toBeCloseTo(64, -0.5);
    expect(proof?.sourceName).toBe("proof.csv");
    expect(job.statusWords).toBe("in proof");
  });

  test("is kept by its content and can be read again, byte for byte", async () => {
    const { proof } = await trial.done("desk", showJobDyno, { jobId: (await dyno.ids(IN_WORK)).jobId });
    const { actor, files } = await trial.as("desk");
    if (actor.kind === "nobody" || !proof) throw new Error("no proof was imported");
    const bytes = await files.read(actor.workshopId, proof.sourceSha256);
    expect(new TextDecoder().decode(bytes).trimEnd()).toBe(shippedLines("proof").join("\n"));
  });

  test("warns of what makes its figures doubtful, and is taken all the same", async () => {
    const { vehicleId } = await dyno.ids("6VC 7JT");
    const cold = {
      kind: "baseline",
      vehicleId,
      airTempC: 8,
      gearboxOilTempC: 40,
      rampRpmPerS: 800,
      gear: "other",
    };
    const oneRun = shippedLines("proof").filter((line) => !/^[23],/.test(line));
    const imported = await dyno.import("manager", cold, streamOf(oneRun.join("\n")));
    if (!imported.ok) throw new Error(imported.refusal.sentence);
    const said = imported.value.warnings.join("\n");
    for (const matter of [/outside the temperatures/, /1 of 3 runs/, /Gearbox oil at 40/, /rpm\/s where 800/])
      expect(said).toMatch(matter);
    expect(said).toMatch(/another gear/);
    expect(said).toMatch(/6[45] kPa of boost, but the engine was entered as naturally aspirated/);
  });

  test("warns that an engine which holds its boost is over-corrected", async () => {
    const { proof } = await trial.done("desk", showJobDyno, { jobId: (await dyno.ids(IN_WORK)).jobId });
    expect(proof?.warnings.join(" ")).toMatch(/holds its boost/);
  });

  test("warns when power is not torque times speed", async () => {
    const { vehicleId } = await dyno.ids("2HM 6ZD");
    const [header = "", ...rows] = shippedLines("baseline");
    const inHorsepower = rows.map((line) => {
      const fields = line.split(",");
      return [...fields.slice(0, 4), (Number(fields[4]) / 0.7457).toFixed(2), ...fields.slice(5)].join(",");
    });
    const log = streamOf([header, ...inHorsepower].join("\n"));
    const imported = await dyno.import("technician", { kind: "baseline", vehicleId }, log);
    expect(imported.ok).toBe(true);
    const { sessions } = await trial.done("desk", showVehicleDyno, { vehicleId });
    expect(sessions.at(-1)?.runs[0]?.warnings.join(" ")).toMatch(/horsepower/);
  });
});

describe("a log that is refused", () => {
  const header = "time_s,engine_rpm,hub_power_kw";
  const bad: readonly (readonly [string, string | Uint8Array, string, RegExp])[] = [
    [
      "a picture",
      new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13]),
      "log-refused",
      /not a text file.*CSV/,
    ],
    ["an empty file", "", "log-refused", /empty/],
    ["one without the speed", "time_s,hub_power_kw\n0,1\n", "log-refused", /no column engine_rpm/],
    [
      "one with words for numbers",
      `${header}\n0,1800,40\n0.1,high,41\n`,
      "log-refused",
      /Line 3 has "high" in engine_rpm/,
    ],
    ["one with NaN", `${header}\n0,1800,NaN\n`, "log-refused", /Line 2 has "NaN" in hub_power_kw/],
    ["one with a header only", `${header}\n`, "log-refused", /no rows/],
    ["one cut off", `${header}\n0,1800,40\n0.1,18\n`, "log-refused", /Line 3 has 2 fields/],
    [
      "one without a sweep",
      `${header}\n0,1800,40\n0.1,1810,41\n`,
      "run-refused",
      /Run 1: .*at least 500 rpm/,
    ],
    ["one of 200 MB", new Uint8Array(LARGEST_LOG_BYTES + 1).fill(32), "log-too-large", /larger than 150 MB/],
  ];

  test.each(bad)("%s", async (_, content, code, sentence) => {
    const { vehicleId } = await dyno.ids("8BD 1LM");
    const before = await kept();
    const result = await dyno.import("technician", { kind: "baseline", vehicleId }, streamOf(content));
    expect(result).toMatchObject({ ok: false, refusal: { code } });
    if (!result.ok) expect(result.refusal.sentence).toMatch(sentence);
    expect(await kept()).toEqual(before);
  });

  test("because its connection broke: nothing of it stays", async () => {
    const { vehicleId } = await dyno.ids("8BD 1LM");
    const before = await kept();
    const broken = (async function* () {
      yield new TextEncoder().encode(`${header}\n0,1800,40\n`);
      throw new Error("connection reset");
    })();
    await expect(dyno.import("technician", { kind: "baseline", vehicleId }, broken)).rejects.toThrow("reset");
    expect(await kept()).toEqual(before);
  });

  test("leaves no part of a file in the store", async () => {
    const { vehicleId } = await dyno.ids("8BD 1LM");
    const folder = `${process.env.TMPDIR ?? "/tmp"}/buildproof-refused-${process.pid}`;
    const context = { ...(await trial.as("technician")), files: folderFileStore(folder) };
    const stream = streamOf(`${header}\n0,1800,forty\n`);
    const setUp = { ...usualSetUp, kind: "baseline", vehicleId };
    expect((await importDynoLog(context, setUp, { name: "x.csv", stream })).ok).toBe(false);
    const left = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
      entry.isFile(),
    );
    expect(left).toEqual([]);
  });
});

describe("an import that is refused before the log is touched", () => {
  /** A stream that must not be read. */
  const untouched = () =>
    (async function* (): AsyncGenerator<Uint8Array> {
      yield await Promise.reject(new Error("the stream was read"));
    })();

  const refusals: readonly (readonly [
    string,
    "technician" | "otherTechnician" | "desk" | "gulfOwner",
    object,
    string,
  ])[] = [
    ["a person without the skill", "otherTechnician", {}, "skill-missing"],
    ["the desk", "desk", {}, "not-allowed"],
    ["the other workshop's owner", "gulfOwner", {}, "not-allowed"],
    ["a barometer in hectopascals", "technician", { barometerKPa: 992 }, "invalid-input"],
    ["humidity over 100 %", "technician", { relativeHumidityPct: 101 }, "invalid-input"],
    ["boiling air", "technician", { airTempC: 95 }, "invalid-input"],
    ["no gear", "technician", { gear: "" }, "invalid-input"],
    ["a proof without a job", "technician", { kind: "proof" }, "job-missing"],
    [
      "a vehicle that does not exist",
      "technician",
      { vehicleId: "00000000-0000-7000-8000-000000000000" },
      "vehicle-not-found",
    ],
    ["a field that nobody knows", "technician", { factor: 1.2 }, "invalid-input"],
  ];

  test.each(refusals)("%s", async (_, part, change, code) => {
    const { vehicleId } = await dyno.ids(UNMEASURED);
    const result = await dyno.import(part, { kind: "baseline", vehicleId, ...change }, untouched());
    expect(result).toMatchObject({ ok: false, refusal: { code } });
  });

  test("a diesel under UN R85 without its fuel, which names the field", async () => {
    const { vehicleId } = await dyno.ids("4KT 7VN");
    const setUp = { kind: "baseline", vehicleId, code: "UN_R85:R85", aspiration: "turbo-cooled" };
    const result = await dyno.import("technician", setUp, untouched());
    expect(result).toMatchObject({
      ok: false,
      refusal: { code: "air-impossible", field: "fuelMgPerLPerCycle" },
    });
  });

  test("a proof of a vehicle that is not here", async () => {
    const { proofOf } = await dyno.ids(WAITING);
    const result = await dyno.import("technician", proofOf, untouched());
    expect(result).toMatchObject({ ok: false, refusal: { code: "job-not-here" } });
  });

  test("a job of another vehicle", async () => {
    const { proofOf } = await dyno.ids(IN_WORK);
    const { vehicleId } = await dyno.ids(WAITING);
    const result = await dyno.import("technician", { ...proofOf, vehicleId }, untouched());
    expect(result).toMatchObject({ ok: false, refusal: { code: "job-not-found" } });
  });
});

describe("the same file again", () => {
  test("is told, not doubled", async () => {
    const { vehicleId } = await dyno.ids(UNMEASURED);
    const before = await kept();
    const result = await dyno.import("technician", { kind: "baseline", vehicleId }, shippedLog("baseline"));
    expect(result).toMatchObject({ ok: false, refusal: { code: "already-imported" } });
    expect(await kept()).toEqual(before);
  });

  test("by two people at once is one session", async () => {
    const { vehicleId } = await dyno.ids("8BD 1LM");
    const once = (part: "technician" | "manager") =>
      dyno.import(part, { kind: "baseline", vehicleId }, shippedLog("baseline"));
    const results = await Promise.all([once("technician"), once("manager")]);
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
    const { sessions } = await trial.done("desk", showVehicleDyno, { vehicleId });
    expect(sessions).toHaveLength(1);
    expect(sessions[0]?.warnings.join(" ")).toMatch(/same file is also kept as the baseline of 1AB 2CD/);
  });

  test("sent once more by a device that did not hear the answer gives the same answer", async () => {
    const { vehicleId } = await dyno.ids("5JC 8KP");
    const key = "7d3c1d0e-8a55-4d0a-9c53-4a6a6b1c9f10";
    const setUp = { ...usualSetUp, kind: "baseline", vehicleId };
    const send = async () =>
      importDynoLog(
        await trial.as("technician"),
        setUp,
        { name: "b.csv", stream: shippedLog("baseline") },
        { key },
      );
    const [first, second] = [await send(), await send()];
    expect(first.ok).toBe(true);
    expect(second).toEqual(first);
  });
});

type Shown = {
  readonly points: readonly { correctedPowerKw: number; correctedTorqueNm: number; engineRpm: number }[];
};

function pointOf(session: Shown | undefined) {
  const point = session?.points[20];
  if (!point) throw new Error("the session has no points");
  return { powerKw: point.correctedPowerKw, torqueNm: point.correctedTorqueNm, rpm: point.engineRpm };
}
