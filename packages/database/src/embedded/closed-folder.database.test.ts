import { chmodSync, existsSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { startEmbeddedServer } from "./embedded-server";
import { isReachableBy } from "./is-reachable-by";
import { readLocalFile } from "./local-file";
import { serverUser } from "./server-user";

let parent: string;

beforeEach(() => {
  parent = mkdtempSync(path.join(tmpdir(), "buildproof-closed-"));
  chmodSync(parent, 0o700);
});

afterEach(() => rmSync(parent, { recursive: true, force: true }));

test("a folder closed to the server's account still gets a server, twice, with the same data", async () => {
  const folder = path.join(parent, "data");
  const said: string[] = [];
  const first = await startEmbeddedServer({ folder, say: (line) => said.push(line) });
  await first.stop();
  const second = await startEmbeddedServer({ folder });
  await second.stop();
  expect([first.how, second.how]).toEqual(["made", "started"]);
  const noted = readLocalFile(path.join(folder, "server.json"));
  const place = String(Reflect.get(Object(noted), "dataFolder"));
  // Only root hands the server to another account; anybody else runs it as themselves, where they are.
  const isRoot = process.getuid?.() === 0;
  expect(place.startsWith("/var/tmp/buildproof-")).toBe(isRoot);
  expect(said.some((line) => line.includes("is closed to the account"))).toBe(isRoot);
  if (isRoot) rmSync(path.dirname(place), { recursive: true, force: true });
  expect(existsSync(path.join(folder, "secrets.json"))).toBe(true);
});

test("an account passes through a folder by the permission that fits it", () => {
  const inner = path.join(parent, "inner");
  mkdirSync(inner);
  const stranger = { name: "stranger", uid: 60_001, gid: 60_001 };
  expect(isReachableBy(stranger, inner)).toBe(false);
  chmodSync(parent, 0o711);
  expect(isReachableBy(stranger, inner)).toBe(true);
  const user = serverUser();
  expect(user === null || user.uid !== 0).toBe(true);
});
