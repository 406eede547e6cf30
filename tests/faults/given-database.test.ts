import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { request } from "node:https";
import path from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { runSql } from "../../packages/database/src/testing/run-sql";
import { startTestServer } from "../../packages/database/src/testing/test-server";
import { dataFolder, freePort, postmasterPid, removeData, startProcess } from "./service-process";

let server: Awaited<ReturnType<typeof startTestServer>>;
let folder: string;
let url: string;

beforeAll(async () => {
  server = await startTestServer();
  await runSql(server.ownerUrl("postgres"), "create database jobs");
  url = server.ownerUrl("jobs");
  folder = dataFolder();
});

afterAll(async () => {
  await server.remove();
  await removeData(folder);
});

async function reset(...args: string[]): Promise<{ code: number | null; output: string }> {
  const child = spawn(process.execPath, ["scripts/reset.mjs", ...args], {
    cwd: path.resolve(import.meta.dirname, "..", ".."),
    env: { ...process.env, DATABASE_URL: url, BUILDPROOF_DATA: folder, BUILDPROOF_DEMO_HISTORY: "no" },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let output = "";
  child.stdout.on("data", (chunk: Buffer) => {
    output += chunk;
  });
  child.stderr.on("data", (chunk: Buffer) => {
    output += chunk;
  });
  const code = await new Promise<number | null>((resolve) => child.once("close", resolve));
  return { code, output };
}

async function workshops(): Promise<unknown[]> {
  return (await runSql(url, "select name from workshop order by name")).map(({ name }) => name);
}

test("with DATABASE_URL that server is used, none of our own is started, and reset brings the demo back", async () => {
  const port = await freePort();
  const service = startProcess({ PORT: String(port), BUILDPROOF_DATA: folder, DATABASE_URL: url });
  await service.says(/Ctrl-C stops it/);
  expect((await fetch(`http://localhost:${port}/sign-in`)).status).toBe(200);
  expect(postmasterPid(folder)).toBeNull();
  service.signal("SIGINT");
  expect(await service.ended).toBe(0);
  const demo = await workshops();
  expect(demo).toContain("Saltbush Dyno & Driveline");

  await runSql(url, "insert into workshop (id, name) values (gen_random_uuid(), 'Added by hand')");
  const unasked = await reset();
  expect(unasked.code).toBe(1);
  expect(unasked.output).toContain("Nothing was changed.");
  expect(await workshops()).toContain("Added by hand");

  const agreed = await reset("--yes");
  expect(agreed.code, agreed.output).toBe(0);
  expect(await workshops()).toEqual(demo);
});

test("an application role made by somebody else is used as it is", async () => {
  await runSql(url, "alter role buildproof_app password 'made elsewhere'");
  const appUrl = new URL(url);
  appUrl.username = "buildproof_app";
  appUrl.password = encodeURIComponent("made elsewhere");
  const service = startProcess({
    PORT: String(await freePort()),
    BUILDPROOF_DATA: folder,
    DATABASE_URL: url,
    DATABASE_APP_URL: appUrl.href,
  });
  await service.says(/Ctrl-C stops it/);
  service.signal("SIGINT");
  await service.ended;
  expect(await runSql(appUrl.href, "select current_user::text as name")).toEqual([
    { name: "buildproof_app" },
  ]);
});

test("with HOST it serves https that a tablet trusts after it has the workshop's authority", async () => {
  const port = await freePort();
  const service = startProcess({
    PORT: String(port),
    HOST: "0.0.0.0",
    BUILDPROOF_DATA: folder,
    DATABASE_URL: url,
  });
  await service.says(/Ctrl-C stops it/);
  const authority = readFileSync(path.join(folder, "certificates", "authority.crt"), "utf8");
  const csrf = await getSecurely(port, "/api/auth/csrf", authority);
  expect(csrf.status).toBe(200);
  expect(csrf.cookies.join()).toContain("__Host-next-auth.csrf-token");
  expect((await getSecurely(port, "/local-authority.crt", authority)).body).toBe(authority);
  await expect(getSecurely(port, "/", undefined)).rejects.toThrow(/self-signed|unable to verify/);
  expect(service.output()).toContain("Compare the fingerprint");
  service.signal("SIGINT");
  expect(await service.ended).toBe(0);
});

type Answer = { readonly status: number | undefined; readonly cookies: string[]; readonly body: string };

function getSecurely(port: number, at: string, ca: string | undefined): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: "localhost", port, path: at, ...(ca ? { ca } : {}) }, (answer) => {
      let body = "";
      answer.on("data", (chunk: Buffer) => {
        body += chunk;
      });
      answer.on("end", () =>
        resolve({ status: answer.statusCode, cookies: answer.headers["set-cookie"] ?? [], body }),
      );
    });
    asked.once("error", reject);
    asked.end();
  });
}
