import path from "node:path";
import { loadTypeScript } from "./service/load-typescript.mjs";
import { checkNode, installWhenNeeded } from "./service/prepare-checkout.mjs";
import { explain } from "./service/stage.mjs";

// npm run bench [-- words of a benchmark's name]
// npm run bench -- planning --instances DIR --schedules N [--seed S] [--json]
try {
  checkNode();
  await installWhenNeeded();
  const folder = path.join(import.meta.dirname, "..", "tests", "bench");
  const [first, ...rest] = process.argv.slice(2);
  if (first === "planning" && rest.length > 0) {
    const { benchInstances } = await loadTypeScript(path.join(folder, "planning-instances.ts"));
    process.exitCode = benchInstances(rest);
  } else {
    const { runBenchmarks } = await loadTypeScript(path.join(folder, "run-benchmarks.ts"));
    process.exitCode = await runBenchmarks(process.argv.slice(2).join(" "));
  }
} catch (error) {
  process.exitCode = explain(error);
}
