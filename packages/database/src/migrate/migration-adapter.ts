import { PrismaPg } from "@prisma/adapter-pg";
import { ColumnTypeEnum, type SqlQuery, type SqlResultSet } from "@prisma/driver-adapter-utils";
import pg from "pg";

type Adapter = Awaited<ReturnType<PrismaPg["connect"]>>;
type Answer = { fields: { dataTypeID: number }[] };

/** Object identifiers of two built-in types, from pg_type.dat of the PostgreSQL sources. */
const INTERNAL_CHAR = 18;
const TEXT = 25;

/**
 * The PostgreSQL adapter with what the migration engine needs and the published one lacks: the
 * internal one-byte type the catalogues use, scripts that hold function bodies, and a scratch
 * database that is really dropped.
 */
export class MigrationAdapter extends PrismaPg {
  constructor(private readonly url: string) {
    super({ connectionString: url, max: 2, options: "-c client_min_messages=warning" });
  }

  private readonly open: Adapter[] = [];

  override async connect(): Promise<Adapter> {
    const adapter = corrected(await super.connect());
    this.open.push(adapter);
    return adapter;
  }

  /** The engine leaves its connections open, which would keep the process alive and the database in use. */
  async closeAll(): Promise<void> {
    for (const adapter of this.open.splice(0)) await adapter.dispose();
  }

  override async connectToShadowDb(): Promise<Adapter> {
    const name = `buildproof_scratch_${crypto.randomUUID().replaceAll("-", "")}`;
    await once(this.url, `create database "${name}"`);
    const address = new URL(this.url);
    address.pathname = `/${name}`;
    const scratch = await new MigrationAdapter(address.href).connect();
    const dispose = scratch.dispose.bind(scratch);
    scratch.dispose = async () => {
      await dispose();
      await once(this.url, `drop database if exists "${name}" with (force)`);
    };
    return scratch;
  }
}

function corrected(adapter: Adapter): Adapter {
  // The engine asks for one-byte catalogue columns by position; note them where the raw answer passes.
  let oneByte: number[] = [];
  const inner = adapter as unknown as { performIO(query: SqlQuery): Promise<Answer> }; // private in its types
  const performIO = inner.performIO.bind(adapter);
  inner.performIO = async (query) => {
    const answer = await performIO(query);
    oneByte = answer.fields.flatMap((field, at) => (field.dataTypeID === INTERNAL_CHAR ? [at] : []));
    for (const at of oneByte) {
      const field = answer.fields[at];
      if (field) field.dataTypeID = TEXT;
    }
    return answer;
  };
  const queryRaw = adapter.queryRaw.bind(adapter);
  adapter.queryRaw = async (query): Promise<SqlResultSet> => {
    const result = await queryRaw(query);
    for (const at of oneByte) result.columnTypes[at] = ColumnTypeEnum.Character;
    return result;
  };
  // One message to the server: it splits the script itself, and runs it as one transaction.
  adapter.executeScript = async (script) => {
    await adapter.underlyingDriver().query(script);
  };
  return adapter;
}

async function once(url: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
