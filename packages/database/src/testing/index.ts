export { type TestDatabase, testDatabase } from "./test-database";
export { startTestServer } from "./test-server";
