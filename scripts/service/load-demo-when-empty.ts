import { isDatabaseEmpty } from "../../packages/database/src/setup/index";
import { loadDemo } from "../../prisma/demo/load";
import { filesFolder } from "./service-environment";
import { stage } from "./stage.mjs";

/** Loads the made workshop into a database that holds none; BUILDPROOF_DEMO_HISTORY=no leaves its past out. */
export async function loadDemoWhenEmpty(folder: string, ownerUrl: string, anchor: Date): Promise<void> {
  if (!(await isDatabaseEmpty(ownerUrl))) return;
  await stage("Loading the demo workshop (everything in it is made up)", () =>
    loadDemo({
      ownerUrl,
      anchor,
      history: process.env.BUILDPROOF_DEMO_HISTORY !== "no",
      filesFolder: filesFolder(folder),
    }),
  );
}
