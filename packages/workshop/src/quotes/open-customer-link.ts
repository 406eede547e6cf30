import type { Actor } from "../core/actor";
import type { Context } from "../core/context";
import { hashOfToken, looksLikeToken } from "./link-token";

type Opened =
  | { readonly ok: true; readonly actor: Extract<Actor, { kind: "customer" }> }
  | { readonly ok: false; readonly because: "unknown" | "expired" | "revoked" };

type Target = {
  readonly link_id: string;
  readonly workshop_id: string;
  readonly version_id: string;
  readonly expires_at: Date;
  readonly revoked_at: Date | null;
};

/** Who the holder of a token acts as, before any workshop is known. A token opens one version and nothing else. */
export async function openCustomerLink(
  context: Pick<Context, "database" | "now">,
  token: string,
): Promise<Opened> {
  if (!looksLikeToken(token)) return { ok: false, because: "unknown" };
  const rows = await context.database.asOutsider(
    (tx) => tx.$queryRaw<Target[]>`select * from customer_link_target(${hashOfToken(token)})`,
  );
  const target = rows[0];
  if (!target) return { ok: false, because: "unknown" };
  if (target.revoked_at) return { ok: false, because: "revoked" };
  if (target.expires_at <= context.now()) return { ok: false, because: "expired" };
  const { link_id: linkId, workshop_id: workshopId, version_id: versionId } = target;
  return { ok: true, actor: { kind: "customer", workshopId, linkId, versionId } };
}
