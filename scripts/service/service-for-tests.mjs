import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { loadTypeScript } from "./load-typescript.mjs";
import { serviceAddress } from "./service-address.mjs";
import { explain } from "./stage.mjs";

// A service with data of its own, for as long as the process that forked this one listens.
delete process.env.DATABASE_URL;
delete process.env.DATABASE_APP_URL;
delete process.env.PUBLIC_URL;
delete process.env.BUILDPROOF_FILES;
const folder = mkdtempSync(path.join(tmpdir(), "buildproof-browser-"));
chmodSync(folder, 0o711);

// Ctrl-C reaches us too; we wait for the tests to let go, and then stop in order.
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => {});
const released = new Promise((resolve) => process.once("disconnect", resolve));
try {
  const { startService } = await loadTypeScript(path.join(import.meta.dirname, "start-service.ts"));
  const service = await startService(folder, serviceAddress(), new Date());
  process.send?.({ url: service.url });
  await Promise.race([released, service.ended]);
  await service.stop();
} catch (error) {
  process.exitCode = explain(error);
} finally {
  rmSync(folder, { recursive: true, force: true });
  if (process.connected) process.disconnect();
}
