import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { type EmbeddedServer, startEmbeddedServer } from "../embedded/embedded-server";

/** Durability is for data someone wants to keep; a test database wants speed. */
const settings = ["fsync=off", "synchronous_commit=off", "full_page_writes=off", "max_connections=200"];

/** A server with a folder of its own that is gone when `remove` resolves. */
export type TestServer = EmbeddedServer & { readonly folder: string; remove(): Promise<void> };

export async function startTestServer(): Promise<TestServer> {
  const folder = mkdtempSync(path.join(tmpdir(), "buildproof-test-"));
  // Closed to everyone else as made; as root the server runs under another account and must pass through.
  chmodSync(folder, 0o711);
  const server = await startEmbeddedServer({ folder, settings });
  return {
    ...server,
    folder,
    async remove() {
      await server.stop();
      for (const each of [server.dataFolder, folder]) rmSync(each, { recursive: true, force: true });
    },
  };
}
