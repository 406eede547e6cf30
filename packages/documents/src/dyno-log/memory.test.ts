import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const script = fileURLToPath(new URL("./read-a-million-rows.ts", import.meta.url));

test("one million rows are read in less than 200 MB, the process included", { timeout: 60_000 }, () => {
  const { stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", script, "1000000"], {
    encoding: "utf8",
  });
  expect(stderr).toBe("");
  const { ok, seen, peakMb } = JSON.parse(stdout) as { ok: boolean; seen: number; peakMb: number };
  expect({ ok, seen }).toEqual({ ok: true, seen: 1_000_000 });
  expect(peakMb).toBeGreaterThan(20);
  expect(peakMb).toBeLessThanOrEqual(200);
});
