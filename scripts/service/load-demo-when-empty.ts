import { existsSync } from "node:fs";
import path from "node:path";
import { isDatabaseEmpty } from "../../packages/database/src/setup/index";
import { repository } from "./repository.mjs";
import { filesFolder } from "./service-environment";
import { stage } from "./stage.mjs";

/** Loads the made workshop into a database that holds none. */
export async function loadDemoWhenEmpty(folder: string, ownerUrl: string, anchor: Date): Promise<void> {
  const file = path.join(repository, "prisma", "demo", "load.ts");
  if (!existsSync(file) || !(await isDatabaseEmpty(ownerUrl))) return;
  const { loadDemo } = await import(file);
  await stage("Loading the demo workshop (everything in it is made up)", () =>
    loadDemo({ ownerUrl, anchor, history: true, filesFolder: filesFolder(folder) }),
  );
}
