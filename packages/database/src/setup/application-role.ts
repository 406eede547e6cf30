import pg from "pg";
import { SetupRefusal } from "./setup-refusal";

/** The role the application serves as: neither superuser nor owner, so row-level security binds it. */
const ROLE = "buildproof_app";

/**
 * Makes the role, or gives the one that is there this password, and returns the address the
 * application connects to. Safe to repeat. Runs before the migrations, which grant to the role.
 */
export async function ensureApplicationRole(ownerUrl: string, password: string): Promise<string> {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    const there = await client.query(
      "select rolsuper or rolbypassrls as strong from pg_roles where rolname = $1",
      [ROLE],
    );
    const verb = there.rowCount === 0 ? "create" : "alter";
    if (verb === "alter" && there.rows[0]?.strong === true) {
      throw new SetupRefusal(
        `The role ${ROLE} can see past row-level security: run "alter role ${ROLE} nosuperuser nobypassrls" and start again.`,
      );
    }
    const { escapeIdentifier, escapeLiteral } = pg.Client.prototype;
    await client.query(`${verb} role ${escapeIdentifier(ROLE)} login password ${escapeLiteral(password)}`);
    await client.query(`grant connect on database ${escapeIdentifier(client.database ?? "")} to ${ROLE}`);
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "42501") {
      throw new SetupRefusal(
        `The user in DATABASE_URL may not make the role ${ROLE}: make it yourself with a password and set DATABASE_APP_URL to its address.`,
      );
    }
    throw error;
  } finally {
    await client.end();
  }
  const address = new URL(ownerUrl);
  address.username = ROLE;
  address.password = encodeURIComponent(password);
  return address.href;
}
