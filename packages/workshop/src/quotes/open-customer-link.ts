import type { Transaction } from "@buildproof/database";
import type { Actor } from "../core/actor";
import type { Context } from "../core/context";
import { hashOfToken, looksLikeToken } from "../core/secret-token";
import { countTry, type TryLimit, triesAreSpent } from "../core/try-limit";

type Opened =
  | { readonly ok: true; readonly actor: Extract<Actor, { kind: "customer" }> }
  | { readonly ok: false; readonly because: "unknown" | "expired" | "revoked" | "too-many-tries" };

type Target = {
  readonly link_id: string;
  readonly workshop_id: string;
  readonly version_id: string;
  readonly expires_at: Date;
  readonly revoked_at: Date | null;
};

/** A token has 256 random bits, so guessing is hopeless anyway: the limit is there against the noise of it. */
const wrongLinks: TryLimit = { of: "wrong-link", tries: 30, seconds: 15 * 60 };

/**
 * Who the holder of a token acts as, before any workshop is known. A token opens one version and nothing else.
 * After many wrong ones the address rests for a while, even for a right one.
 */
export async function openCustomerLink(
  { database, now, address }: Pick<Context, "database" | "now" | "address">,
  token: string,
): Promise<Opened> {
  const at = now();
  return database.asOutsider(async (tx) => {
    if (await triesAreSpent(tx, wrongLinks, address, at)) return { ok: false, because: "too-many-tries" };
    const opened = await openToken(tx, token, at);
    if (!opened.ok) await countTry(tx, wrongLinks, address, at);
    return opened;
  });
}

async function openToken(tx: Transaction, token: string, at: Date): Promise<Opened> {
  if (!looksLikeToken(token)) return { ok: false, because: "unknown" };
  const rows = await tx.$queryRaw<Target[]>`select * from customer_link_target(${hashOfToken(token)})`;
  const target = rows[0];
  if (!target) return { ok: false, because: "unknown" };
  if (target.revoked_at) return { ok: false, because: "revoked" };
  if (target.expires_at <= at) return { ok: false, because: "expired" };
  const { link_id: linkId, workshop_id: workshopId, version_id: versionId } = target;
  return { ok: true, actor: { kind: "customer", workshopId, linkId, versionId } };
}
