import { expect, test } from "vitest";
import { demoWorkshop } from "../testing/demo-workshop";
import { dynoTrial, shippedLines, streamOf } from "../testing/dyno-trial";
import { readDynoCertificate } from "./read-certificate";
import { releaseVerdict } from "./release-verdict";
import { showJobDyno } from "./show-job";

const trial = demoWorkshop();
const dyno = dynoTrial(trial);

test("a proof of void runs alone demonstrates nothing, and there is nothing to certify", async () => {
  const { proofOf, jobId } = await dyno.ids("7SV 5NB");
  const [header = "", ...rows] = shippedLines("proof");
  const slipping = rows.map((line) => {
    const fields = line.split(",");
    const rpm = Number(fields[2]);
    if (rpm < 2_800) fields[3] = (rpm / (3.36 * (1 + (2_800 - rpm) / 8_000))).toFixed(1);
    return fields.join(",");
  });
  const imported = await dyno.import("technician", proofOf, streamOf([header, ...slipping].join("\n")));
  expect(imported).toMatchObject({ ok: true, value: { runs: 3, excluded: 3 } });
  const { weighed } = await trial.done("technician", showJobDyno, { jobId });
  expect(weighed?.sentence).toMatch(/^Not demonstrated: 0 of 3 runs/);
  await trial.done("technician", releaseVerdict, { jobId, seen: weighed?.sentence });
  expect(await trial.refused("desk", readDynoCertificate, { jobId })).toMatchObject({
    code: "nothing-to-certify",
    sentence: expect.stringMatching(/Import new runs and release their verdict\.$/),
  });
});
