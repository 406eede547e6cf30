import path from "node:path";
import { loadTypeScript } from "./service/load-typescript.mjs";
import { checkNode, installWhenNeeded } from "./service/prepare-checkout.mjs";
import { explain } from "./service/stage.mjs";

// npm run bench [-- words of a benchmark's name]
try {
  checkNode();
  await installWhenNeeded();
  const file = path.join(import.meta.dirname, "..", "tests", "bench", "run-benchmarks.ts");
  const { runBenchmarks } = await loadTypeScript(file);
  process.exitCode = await runBenchmarks(process.argv.slice(2).join(" "));
} catch (error) {
  process.exitCode = explain(error);
}
