import type { TestProject } from "vitest/node";
import { prepareTemplate } from "./template-database";
import { startTestServer } from "./test-server";

/** One server and one migrated template for the whole run; removed afterwards. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const server = await startTestServer();
  try {
    project.provide("testConnection", await prepareTemplate(server));
  } catch (error) {
    await server.remove();
    throw error;
  }
  return () => server.remove();
}
