import { randomBytes, scryptSync } from "node:crypto";
import { ensureDatabaseExists, prepareDatabase } from "@buildproof/database/setup";
import type { TestProject } from "vitest/node";
import { loadDemo } from "../../../../prisma/demo/load";
import { demoNow, demoTemplate } from "./demo-moment";

/** Loads the demo, without its history, into a template that test files clone. Runs after the database's own set-up. */
export default async function setup(project: TestProject): Promise<void> {
  const { serverUrl, appPassword } = project.getProvidedContext().testConnection;
  const owner = new URL(serverUrl);
  owner.pathname = `/${demoTemplate}`;
  await ensureDatabaseExists(serverUrl, demoTemplate);
  await prepareDatabase({ ownerUrl: owner.href, applicationPassword: appPassword });
  await loadDemo({
    ownerUrl: owner.href,
    anchor: demoNow,
    seed: 1,
    history: false,
    passwordHash: async (password) => cheapHash(password),
  });
}

/** The real scheme at a cost that tests can pay many times. */
function cheapHash(password: string): string {
  const salt = randomBytes(16);
  const key = scryptSync(password, salt, 64, { N: 1024, r: 8, p: 1 });
  return ["scrypt", 1024, 8, 1, salt.toString("base64"), key.toString("base64")].join("$");
}
