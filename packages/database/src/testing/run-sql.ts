import pg from "pg";

/** Runs SQL on a connection of its own, to arrange or to look behind the wall; answers the rows. */
export async function runSql(url: string, sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(sql)).rows;
  } finally {
    await client.end();
  }
}
