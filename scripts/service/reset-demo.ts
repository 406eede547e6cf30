import { rmSync } from "node:fs";
import { createInterface } from "node:readline/promises";
import { emptyDatabase } from "../../packages/database/src/setup/index";
import { loadDemoWhenEmpty } from "./load-demo-when-empty";
import { openOwner, openServiceDatabase } from "./open-service-database";
import { dataFolder } from "./repository.mjs";
import { filesFolder } from "./service-environment";
import { stage } from "./stage.mjs";

/** Empties the database and the files, and loads the demo; answers the exit code. */
export async function resetDemo(isConfirmed: boolean): Promise<number> {
  const where = process.env.DATABASE_URL ? "the database in DATABASE_URL" : `the database in ${dataFolder}`;
  if (!isConfirmed && !(await confirm(where))) {
    console.log("Nothing was changed.");
    return 1;
  }
  const owner = await openOwner(dataFolder);
  try {
    await stage("Removing everything", async () => {
      await emptyDatabase(owner.ownerUrl);
      rmSync(filesFolder(dataFolder), { recursive: true, force: true });
    });
    const database = await openServiceDatabase(dataFolder);
    await loadDemoWhenEmpty(dataFolder, database.ownerUrl, new Date());
  } finally {
    await owner.close();
  }
  console.log("The demo is as new. People who were signed in have to sign in again.");
  return 0;
}

async function confirm(where: string): Promise<boolean> {
  if (!process.stdin.isTTY) {
    console.error("Nobody can be asked here: run npm run reset -- --yes to agree.");
    return false;
  }
  const prompt = createInterface({ input: process.stdin, output: process.stdout });
  const answer = await prompt.question(
    `This removes every customer, quote, job and file in ${where} and loads the demo. Type reset to go on: `,
  );
  prompt.close();
  return answer.trim().toLowerCase() === "reset";
}
