import path from "node:path";
import { loadTypeScript } from "./service/load-typescript.mjs";
import { checkNode, generateWhenNeeded, installWhenNeeded } from "./service/prepare-checkout.mjs";
import { explain } from "./service/stage.mjs";

// Throws the data away and loads the demo again. Asks first; --yes answers.
try {
  checkNode();
  await installWhenNeeded();
  await generateWhenNeeded();
  const { resetDemo } = await loadTypeScript(path.join(import.meta.dirname, "service", "reset-demo.ts"));
  process.exitCode = await resetDemo(process.argv.includes("--yes"));
} catch (error) {
  process.exitCode = explain(error);
}
