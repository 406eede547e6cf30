import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import {
  ask,
  dataFolder,
  freePort,
  killAndWait,
  postmasterPid,
  removeData,
  type ServiceProcess,
  startProcess,
} from "./service-process";

let folder: string;
let port: number;
let running: ServiceProcess | undefined;

beforeAll(async () => {
  folder = dataFolder();
  port = await freePort();
});

afterEach(async () => {
  running?.signal("SIGKILL");
  await running?.ended;
});

afterAll(() => removeData(folder));

async function start(): Promise<ServiceProcess> {
  running = startProcess({ PORT: String(port), BUILDPROOF_DATA: folder });
  await running.says(/Ctrl-C stops it/);
  return running;
}

async function answers(): Promise<number> {
  return (await fetch(`http://localhost:${port}/sign-in`)).status;
}

test("Ctrl-C stops the pages and the database, and the second start is quick", async () => {
  const first = await start();
  expect(await answers()).toBe(200);
  first.signal("SIGINT");
  expect(await first.ended).toBe(0);
  expect(postmasterPid(folder)).toBeNull();
  await expect(answers()).rejects.toThrow();

  const begun = performance.now();
  const second = await start();
  const seconds = (performance.now() - begun) / 1000;
  console.log(`second start: ${seconds.toFixed(1)} s`);
  expect(second.output()).not.toMatch(/Loading the demo|Building|applied/);
  // The promise is 5 s on a machine that does nothing else; a busy one gets room.
  expect(seconds).toBeLessThan(20);
  second.signal("SIGTERM");
  expect(await second.ended).toBe(0);
});

test("a killed start script loses nothing: the next one finds its server and takes the port again", async () => {
  const first = await start();
  await ask(folder, "insert into workshop (id, name) values (gen_random_uuid(), 'Kept through a kill')");
  await killAndWait(first.pid, "SIGKILL").catch(() => {});
  await first.ended;
  expect(postmasterPid(folder)).not.toBeNull();

  const second = await start();
  expect(second.output()).toContain("found it running already, with everything saved");
  expect(await answers()).toBe(200);
  const kept = await ask(folder, "select 1 from workshop where name = 'Kept through a kill'");
  expect(kept).toHaveLength(1);
  second.signal("SIGINT");
  expect(await second.ended).toBe(0);
  expect(postmasterPid(folder)).toBeNull();
});

test("a power cut loses nothing: script and server killed at once", async () => {
  const first = await start();
  await ask(folder, "insert into workshop (id, name) values (gen_random_uuid(), 'Kept through a power cut')");
  const server = postmasterPid(folder);
  expect(server).not.toBeNull();
  process.kill(first.pid, "SIGKILL");
  if (server !== null) await killAndWait(server, "SIGKILL");
  await first.ended;

  const second = await start();
  expect(await answers()).toBe(200);
  const kept = await ask(folder, "select 1 from workshop where name = 'Kept through a power cut'");
  expect(kept).toHaveLength(1);
  second.signal("SIGINT");
  expect(await second.ended).toBe(0);
});
