/** Why the database said no, in a form a use case can turn into a sentence. */
export type DatabaseRefusal = {
  readonly kind:
    | "unique"
    | "exclusion"
    | "check"
    | "foreign-key"
    | "not-null"
    | "raised"
    | "row-security"
    | "conflict"
    | "unreachable"
    | "other";
  /** Name of the violated constraint or index, where the server tells it. */
  readonly constraint?: string;
  /** The server's own words; for `raised`, the text given to RAISE EXCEPTION. */
  readonly message: string;
};

/** SQLSTATE codes: PostgreSQL manual, appendix A, "PostgreSQL Error Codes". */
const kindOfCode: Readonly<Record<string, DatabaseRefusal["kind"]>> = {
  "23505": "unique",
  "23P01": "exclusion",
  "23514": "check",
  "23503": "foreign-key",
  "23001": "foreign-key",
  "23502": "not-null",
  P0001: "raised",
  "42501": "row-security",
  "40001": "conflict",
  "40P01": "conflict",
};

/** The codes Prisma gives where it kept no code of the server. */
const kindOfPrismaCode: Readonly<Record<string, DatabaseRefusal["kind"]>> = {
  P2002: "unique",
  P2003: "foreign-key",
  P2034: "conflict",
  P1001: "unreachable",
  P1017: "unreachable",
};

/** Null when the error did not come from the database. */
export function databaseRefusal(error: unknown): DatabaseRefusal | null {
  if (!(error instanceof Error)) return null;
  const cause = field(field(field(error, "meta"), "driverAdapterError"), "cause") ?? field(error, "cause");
  const code = text(field(cause, "originalCode")) ?? text(field(error, "code"));
  if (code === undefined) return null;
  const message = text(field(cause, "originalMessage")) ?? error.message;
  const constraint = text(field(field(cause, "constraint"), "index")) ?? constraintIn(message);
  const kind =
    kindOfCode[code] ?? kindOfPrismaCode[code] ?? (/^(P\d{4}|[0-9A-Z]{5})$/.test(code) ? "other" : null);
  if (kind === null) return null;
  return { kind, message, ...(constraint === undefined ? {} : { constraint }) };
}

/** Exclusion and check violations carry the name only inside the sentence. */
function constraintIn(message: string): string | undefined {
  return /constraint "([^"]+)"/.exec(message)?.[1];
}

function field(holder: unknown, name: string): unknown {
  return typeof holder === "object" && holder !== null ? Reflect.get(holder, name) : undefined;
}

function text(value: unknown): string | undefined {
  return typeof value === "string" && value !== "" ? value : undefined;
}
