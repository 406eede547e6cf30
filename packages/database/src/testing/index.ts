export { runSql } from "./run-sql";
export { prepareTemplate, TEMPLATE, type TestConnection } from "./template-database";
export { type TestDatabase, testDatabase } from "./test-database";
export { startTestServer } from "./test-server";
