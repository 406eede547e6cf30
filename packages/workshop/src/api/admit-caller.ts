import type { Context } from "../core/context";
import { perform } from "../core/perform";
import { ok, type Result } from "../core/result";
import { hashOfToken, looksLikeToken } from "../core/secret-token";
import { countTry, type TryLimit } from "../core/try-limit";
import { whoAmI } from "../identity/own-account";
import { refuseApi } from "./refuse-api";

/** Twice a caller's share, for the programs of one workshop behind one address. */
const callsOfAddress: TryLimit = { of: "api-address", tries: 240, seconds: 60 };
const callsOfCaller: TryLimit = { of: "api-caller", tries: 120, seconds: 60 };

/**
 * Lets a signed-in person, or a program with a workshop's token, use the public calculations. They read no data of
 * the workshop, so nothing more than this is opened. Every call counts, refused ones for its address.
 * @param authorisation the request's Authorization header
 */
export async function admitCaller(context: Context, authorisation: string | null): Promise<Result<null>> {
  const now = context.now();
  const wait = await context.database.asOutsider((tx) => countTry(tx, callsOfAddress, context.address, now));
  if (wait !== null) return refuseApi("too-many-calls", { retryAfterS: wait });
  const caller = authorisation === null ? await signedIn(context) : await holderOf(context, authorisation);
  if (!caller.ok) return caller;
  const rest = await context.database.asOutsider((tx) => countTry(tx, callsOfCaller, caller.value, now));
  return rest === null ? ok(null) : refuseApi("too-many-calls", { retryAfterS: rest });
}

async function signedIn(context: Context): Promise<Result<string>> {
  if (context.actor.kind === "nobody") return refuseApi("no-caller");
  const person = await perform(context, whoAmI, {});
  return person.ok ? ok(person.value.id) : person;
}

/** The scheme's name is of any case: RFC 9110 §11.1; `Bearer`: RFC 6750 §2.1. */
async function holderOf(context: Context, authorisation: string): Promise<Result<string>> {
  const token = /^bearer +(\S+) *$/i.exec(authorisation)?.[1];
  if (token === undefined) return refuseApi("no-caller");
  if (!looksLikeToken(token)) return refuseApi("token-unknown");
  const rows = await context.database.asOutsider(
    (tx) => tx.$queryRaw<{ token_id: string; revoked: boolean }[]>`
      select * from use_api_token(${hashOfToken(token)}, ${context.now()}::timestamptz)`,
  );
  const found = rows[0];
  if (!found) return refuseApi("token-unknown");
  return found.revoked ? refuseApi("token-revoked") : ok(found.token_id);
}
