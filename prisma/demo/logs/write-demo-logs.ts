import { mkdir, writeFile } from "node:fs/promises";
import { demoLogs } from "./demo-logs";
import { makeDynoLog } from "./make-dyno-log";

/* npx tsx prisma/demo/logs/write-demo-logs.ts */
const folder = new URL("../../../shared/demo-logs/", import.meta.url);
await mkdir(folder, { recursive: true });
for (const [name, order] of Object.entries(demoLogs)) {
  const text = makeDynoLog(order);
  await writeFile(new URL(name, folder), text);
  console.log(`${name}: ${text.split("\n").length - 2} rows, ${Math.round(text.length / 1000)} kB`);
}
