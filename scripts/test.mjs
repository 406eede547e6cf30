import { loadTypeScript } from "./service/load-typescript.mjs";
import { checkNode, generateWhenNeeded, installWhenNeeded } from "./service/prepare-checkout.mjs";
import { explain } from "./service/stage.mjs";
import { runTestStages } from "./test/test-stages.mjs";

// Everything that has to hold, from a machine with Node and npm alone. The last line is the sum.
// --only NAME (may be repeated) runs some of the stages.
let counts = { passed: 0, failed: 1 };
try {
  checkNode();
  await installWhenNeeded();
  await generateWhenNeeded();
  counts = await runTestStages(onlyFrom(process.argv.slice(2)), loadTypeScript);
} catch (error) {
  explain(error);
}
process.exitCode = counts.failed === 0 && counts.passed > 0 ? 0 : 1;
console.log(`\n${counts.passed} passed, ${counts.failed} failed`);

function onlyFrom(args) {
  return args.flatMap((arg, at) => (arg === "--only" ? [args[at + 1]] : []));
}
