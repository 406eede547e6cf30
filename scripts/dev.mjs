import path from "node:path";
import { loadTypeScript } from "./service/load-typescript.mjs";
import { checkNode, generateWhenNeeded, installWhenNeeded } from "./service/prepare-checkout.mjs";
import { checkPort, serviceAddress } from "./service/service-address.mjs";
import { explain } from "./service/stage.mjs";

// Development: the same database as npm start, pages compiled as they are asked for.
try {
  checkNode();
  const address = serviceAddress();
  await checkPort(address);
  await installWhenNeeded();
  await generateWhenNeeded();
  const { serveDevelopment } = await loadTypeScript(
    path.join(import.meta.dirname, "service", "serve-development.ts"),
  );
  process.exitCode = await serveDevelopment(address);
} catch (error) {
  process.exitCode = explain(error);
}
