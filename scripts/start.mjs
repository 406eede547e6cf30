import path from "node:path";
import { loadTypeScript } from "./service/load-typescript.mjs";
import { checkNode, generateWhenNeeded, installWhenNeeded } from "./service/prepare-checkout.mjs";
import { checkPort, serviceAddress } from "./service/service-address.mjs";
import { explain } from "./service/stage.mjs";

// Needs nothing but Node: everything else is installed by the second stage.
try {
  checkNode();
  const address = serviceAddress();
  await checkPort(address);
  await installWhenNeeded();
  await generateWhenNeeded();
  const { runService } = await loadTypeScript(path.join(import.meta.dirname, "service", "run-service.ts"));
  process.exitCode = await runService(address);
} catch (error) {
  process.exitCode = explain(error);
}
