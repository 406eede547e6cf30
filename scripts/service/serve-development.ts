import { spawn } from "node:child_process";
import path from "node:path";
import { loadDemoWhenEmpty } from "./load-demo-when-empty";
import { openServiceDatabase } from "./open-service-database";
import { dataFolder, repository } from "./repository.mjs";
import type { serviceAddress } from "./service-address.mjs";
import { serviceEnvironment } from "./service-environment";

/** Serves with recompilation until Ctrl-C; answers the exit code. */
export async function serveDevelopment(address: ReturnType<typeof serviceAddress>): Promise<number> {
  const database = await openServiceDatabase(dataFolder);
  try {
    await loadDemoWhenEmpty(dataFolder, database.ownerUrl, new Date());
    // The https front of npm start is not put before the development server.
    const plain = address.isSecure ? { ...address, url: address.url.replace("https:", "http:") } : address;
    const next = path.join(repository, "node_modules", "next", "dist", "bin", "next");
    const child = spawn(process.execPath, [next, "dev", "-p", String(address.port), "-H", address.host], {
      cwd: path.join(repository, "apps", "web"),
      env: serviceEnvironment(dataFolder, database.appUrl, plain),
      stdio: "inherit",
    });
    const stop = () => child.kill("SIGTERM");
    process.on("SIGINT", stop);
    process.on("SIGTERM", stop);
    return await new Promise((resolve) => child.once("close", (code) => resolve(code === null ? 0 : code)));
  } finally {
    await database.close();
  }
}
