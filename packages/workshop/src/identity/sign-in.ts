import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import type { Context } from "../core/context";
import { newId } from "../core/new-id";
import { ok, type Result, refusals } from "../core/result";
import { passwordMatches } from "./password-hash";

const signInInput = z.strictObject({
  email: z.string().trim().toLowerCase().max(254),
  password: z.string().max(200),
});

/** Failures in this long a time count, for one account and for one address. */
const windowMs = 15 * 60 * 1000;
const accountLimit = 5;
const addressLimit = 30;

const refuse = refusals({
  // One sentence for every cause, so that nobody learns which accounts exist or are locked.
  "sign-in-failed": () =>
    "That e-mail and password do not match, or there were too many tries. Check both, or wait fifteen minutes and try again.",
});

/** What a session token carries: who, of which workshop, and under which "sign out everywhere" count. */
export type SignedIn = {
  readonly personId: string;
  readonly workshopId: string;
  readonly sessionCounter: number;
};

type Found = {
  person_id: string;
  workshop_id: string;
  password_hash: string;
  active: boolean;
  session_counter: number;
};

/** Checks e-mail and password. Every try is recorded; too many failures close account and address for a while. */
export async function signIn(context: Context, input: unknown): Promise<Result<SignedIn>> {
  const parsed = signInInput.safeParse(input);
  if (!parsed.success) return refuse("sign-in-failed");
  const { email, password } = parsed.data;
  const now = context.now();
  const { found, closed } = await context.database.asOutsider(async (tx) => ({
    found: await findPerson(tx, email),
    closed: await isClosed(tx, email, context.address, now),
  }));
  const matches = await passwordMatches(password, found?.password_hash ?? null);
  const succeeded = matches && !closed && found?.active === true;
  if (!closed || succeeded) {
    await context.database.asOutsider(
      (tx) => tx.$executeRaw`
        select record_sign_in_attempt(${newId()}::uuid, ${email}, ${context.address}, ${succeeded}, ${now}::timestamptz)`,
    );
  }
  if (!succeeded || !found) return refuse("sign-in-failed");
  return ok({
    personId: found.person_id,
    workshopId: found.workshop_id,
    sessionCounter: found.session_counter,
  });
}

async function findPerson(tx: Transaction, email: string): Promise<Found | undefined> {
  const rows = await tx.$queryRaw<Found[]>`select * from sign_in_person(${email})`;
  return rows[0];
}

async function isClosed(tx: Transaction, email: string, address: string, now: Date): Promise<boolean> {
  const since = new Date(now.getTime() - windowMs);
  const rows = await tx.$queryRaw<{ by_account: bigint; by_address: bigint }[]>`
    select * from sign_in_failures(${email}, ${address}, ${since}::timestamptz)`;
  const failures = rows[0];
  return !!failures && (failures.by_account >= accountLimit || failures.by_address >= addressLimit);
}
