import { describe, expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import { dynoTrial, shippedLines, shippedLog, streamOf } from "../testing/dyno-trial";
import { countRunAgain, excludeRun } from "./exclude-run";
import { readDynoCertificate } from "./read-certificate";
import { releaseVerdict } from "./release-verdict";
import { showDyno } from "./show-dyno";
import { showJobDyno } from "./show-job";
import { showVehicleDyno } from "./show-vehicle";

const trial = demoWorkshop();
const dyno = dynoTrial(trial);

/** Long Grade 2.4, half way, with a baseline: it promises 325 to 375 kW at the hubs. */
const BLOWER = "7SV 5NB";
/** Lift and tyres: nothing is promised of power. */
const LIFT = "1TK 8HC";

const page = async (plate = BLOWER) =>
  trial.done("technician", showJobDyno, { jobId: (await dyno.ids(plate)).jobId });

async function measure(lines: readonly string[], change: object = {}) {
  const { proofOf } = await dyno.ids(BLOWER);
  const result = await dyno.import("technician", { ...proofOf, ...change }, streamOf(lines.join("\n")));
  if (!result.ok) throw new Error(result.refusal.sentence);
  return page();
}

async function release(seen?: string) {
  const { jobId } = await dyno.ids(BLOWER);
  const read = seen ?? (await page()).weighed?.sentence ?? "nothing to read";
  return { jobId, seen: read };
}

describe("before there is anything to judge", () => {
  test("a verdict without a proof is refused", async () => {
    expect(await trial.refused("technician", releaseVerdict, await release("Kept."))).toMatchObject({
      code: "proof-missing",
    });
  });

  test("a verdict on a job that promises no power is refused", async () => {
    const { jobId } = await dyno.ids(LIFT);
    const refusal = await trial.refused("technician", releaseVerdict, { jobId, seen: "Kept." });
    expect(refusal.code).toBe("no-promise");
  });

  test("there is no certificate", async () => {
    const { jobId } = await dyno.ids(BLOWER);
    expect((await trial.refused("desk", readDynoCertificate, { jobId })).code).toBe("verdict-not-released");
  });

  test("the dyno's day shows what waits for it", async () => {
    const { proofsWaiting, baselinesWaiting, sessions } = await trial.done("technician", showDyno, {});
    expect(proofsWaiting.map(({ vehicle }) => vehicle.plate)).toContain(BLOWER);
    expect(baselinesWaiting.map(({ vehicle }) => vehicle.plate)).toContain("1AB 2CD");
    expect(sessions.length).toBeGreaterThan(0);
  });
});

describe("not demonstrated", () => {
  test("by two runs, whatever they show", async () => {
    const { weighed } = await measure(shippedLines("proof").filter((line) => !line.startsWith("3,")));
    expect(weighed).toMatchObject({ outcome: "notDemonstrated", reason: "too-few-runs" });
    expect(weighed?.sentence).toMatch(/2 of 3 runs/);
  });

  test("by runs that do not agree", async () => {
    const [header = "", ...rows] = shippedLines("proof");
    const third = rows.map((line) => (line.startsWith("3,") ? weakened(line, 0.94) : line));
    const { weighed } = await measure([header, ...third]);
    expect(weighed).toMatchObject({ outcome: "notDemonstrated", reason: "runs-do-not-agree" });
  });

  test("in air that the correction does not allow", async () => {
    const lines = [...shippedLines("proof"), "", "", "", "", ""];
    const { weighed } = await measure(lines, { airTempC: 45 });
    expect(weighed).toMatchObject({ outcome: "notDemonstrated", reason: "correction-out-of-limits" });
  });
});

describe("missed", () => {
  test("by a standard engine, short by the difference", async () => {
    const { weighed } = await measure(shippedLines("baseline"), { aspiration: "natural" });
    expect(weighed).toMatchObject({ outcome: "missed" });
    expect(weighed?.sentence).toMatch(/short by (63|64|65) kW/);
  });
});

describe("a run that went past an abort limit", () => {
  test("is left out at once, and nobody may count it again", async () => {
    const [header = "", ...rows] = shippedLines("proof");
    const starved = rows.map((line) => (line.startsWith("2,") ? withRail(line, 13.1) : line));
    const { proof } = await measure([header, ...starved]);
    const run = proof?.runs[1];
    expect(run?.excludedBecause).toMatch(
      /Fuel rail pressure 13\.1 MPa at .* rpm, where it may not fall below 14/,
    );
    expect(proof?.figures.runs).toBe(2);
    const again = { runId: run?.id, reason: "The gauge was wrong, I think." };
    expect((await trial.refused("technician", countRunAgain, again)).code).toBe("past-a-limit");
  });
});

describe("kept", () => {
  test("by the shipped proof, with its numbers", async () => {
    const { proofOf } = await dyno.ids(BLOWER);
    expect((await dyno.import("technician", proofOf, shippedLog("proof"))).ok).toBe(true);
    const { weighed, comparison } = await page();
    expect(weighed).toMatchObject({ outcome: "kept", reason: "within-the-promise" });
    expect(weighed?.measuredKw).toBeCloseTo(366, -0.5);
    expect(comparison?.isDemonstrated).toBe(true);
  });

  test("but not while a run is left out, which is undone with a reason", async () => {
    const { proof } = await page();
    const runId = proof?.runs[0]?.id;
    const reason = "Shifted down half way.";
    await trial.done("technician", excludeRun, { runId, reason });
    expect((await page()).weighed).toMatchObject({ outcome: "notDemonstrated" });
    expect((await trial.refused("technician", excludeRun, { runId, reason })).code).toBe("already-excluded");
    await trial.done("technician", countRunAgain, { runId, reason: "It was another run." });
    expect((await page()).weighed).toMatchObject({ outcome: "kept" });
    expect((await trial.refused("technician", countRunAgain, { runId, reason })).code).toBe("not-excluded");
    const audit = await trial.sql("select after from audit_event where entity = 'dyno run' order by id");
    expect(audit).toHaveLength(2);
  });

  test("refused with a reason too short to judge, a run unknown, or another workshop's hand", async () => {
    const runId = (await page()).proof?.runs[0]?.id;
    const reason = "Shifted down half way.";
    expect((await trial.refused("technician", excludeRun, { runId, reason: "bad" })).code).toBe(
      "invalid-input",
    );
    const unknown = "00000000-0000-7000-8000-000000000000";
    expect((await trial.refused("technician", excludeRun, { runId: unknown, reason })).code).toBe(
      "run-not-found",
    );
    expect((await trial.refused("otherTechnician", excludeRun, { runId, reason })).code).toBe(
      "skill-missing",
    );
  });

  test("is not released by somebody without the skill, nor on figures that have changed", async () => {
    const asked = await release();
    expect((await trial.refused("otherTechnician", releaseVerdict, asked)).code).toBe("skill-missing");
    expect((await trial.refused("desk", releaseVerdict, asked)).code).toBe("not-allowed");
    const stale = { ...asked, seen: "Kept: 400 kW measured, 350 kW to 390 kW promised." };
    expect((await trial.refused("technician", releaseVerdict, stale)).code).toBe("verdict-changed");
  });

  test("is released once, by name, and the runs stay as they are", async () => {
    const asked = await release();
    const released = await trial.done("technician", releaseVerdict, asked);
    expect(released.outcome).toBe("kept");
    expect((await trial.refused("technician", releaseVerdict, asked)).code).toBe("verdict-released");
    const { verdict, proof } = await page();
    expect(verdict).toMatchObject({ by: "Tilda Brennock", isCurrent: true, sentence: released.sentence });
    const change = { runId: proof?.runs[0]?.id, reason: "Shifted down half way." };
    expect((await trial.refused("technician", excludeRun, change)).code).toBe("verdict-stands");
    await expect(trial.sql("update verdict set outcome = 'missed'")).rejects.toThrow(/append_only/);
  });

  test("is certified on paper, the same bytes each time", async () => {
    const { jobId } = await dyno.ids(BLOWER);
    const first = await trial.done("desk", readDynoCertificate, { jobId });
    const second = await trial.done("owner", readDynoCertificate, { jobId });
    expect(new TextDecoder("latin1").decode(first.bytes.slice(0, 5))).toBe("%PDF-");
    expect(first.bytes.length).toBe(second.bytes.length);
    expect(first.name).toMatch(/^dyno-certificate-job-\d+\.pdf$/);
  });

  test("is open again once new runs are imported", async () => {
    const { verdict, weighed } = await measure([...shippedLines("proof"), "", ""]);
    expect(verdict?.isCurrent).toBe(false);
    expect(weighed?.outcome).toBe("kept");
  });
});

describe("like is compared with like", () => {
  test("a proof under another code than its baseline's is not judged", async () => {
    const { weighed } = await measure([...shippedLines("proof"), "", "", ""], { code: "UN_R85:R85" });
    const { jobId } = await dyno.ids(BLOWER);
    const asked = { jobId, seen: weighed?.sentence };
    expect((await trial.refused("technician", releaseVerdict, asked)).code).toBe("codes-differ");
    expect((await page()).comparison?.obstacles.join(" ")).toMatch(
      /SAE J1349 \(AUG2004\) and the proof to UN R85/,
    );
  });
});

describe("the other workshop", () => {
  test("sees neither vehicle nor job", async () => {
    const { vehicleId, jobId } = await dyno.ids(BLOWER);
    expect((await trial.refused("gulfOwner", showVehicleDyno, { vehicleId })).code).toBe("vehicle-not-found");
    expect((await trial.refused("gulfOwner", showJobDyno, { jobId })).code).toBe("job-not-found");
    expect((await trial.refused("gulfOwner", readDynoCertificate, { jobId })).code).toBe("job-not-found");
    const { sessions } = await trial.done("gulfOwner", showDyno, {});
    expect(sessions.map(({ vehicle }) => vehicle.plate)).not.toContain(BLOWER);
  });
});

/** The columns of a shipped log: run, time, engine speed, hub speed, power, torque, boost, mixture, rail, intake. */
function weakened(line: string, share: number): string {
  const fields = line.split(",");
  return fields
    .map((field, index) => (index === 4 || index === 5 ? (Number(field) * share).toFixed(2) : field))
    .join(",");
}

function withRail(line: string, railMPa: number): string {
  const fields = line.split(",");
  return fields
    .map((field, index) => (index === 8 && Number(fields[2]) > 5_300 ? railMPa.toFixed(2) : field))
    .join(",");
}
