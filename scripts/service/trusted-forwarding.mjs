import { createHash, timingSafeEqual } from "node:crypto";
import { subscribe } from "node:diagnostics_channel";

/** The tablets' https front proves itself with this header; it never goes further than the next door. */
export const FRONT_HEADER = "x-buildproof-front";

/**
 * Drops what a caller claims about its own way here (Forwarded, X-Forwarded-…) unless it was written by our own
 * https front on this machine, or by the proxy that PUBLIC_URL says stands before us. Without the claim the web
 * server takes the socket's address, which is what closes an address after many wrong passwords.
 * @param {import("node:http").IncomingHttpHeaders} headers changed in place
 * @param {{ peer: string | undefined, frontSecret: string | undefined, isBehindProxy: boolean }} setting
 */
export function dropUntrustedForwarding(headers, { peer, frontSecret, isBehindProxy }) {
  const shown = headers[FRONT_HEADER];
  delete headers[FRONT_HEADER];
  const isFront = frontSecret !== undefined && isLoopback(peer) && isSame(String(shown ?? ""), frontSecret);
  if (isFront || isBehindProxy) return;
  for (const name of Object.keys(headers)) {
    if (name === "forwarded" || name === "x-real-ip" || name.startsWith("x-forwarded-")) delete headers[name];
  }
}

/** Does so for every request of every http server of this process, before anything else reads it. */
export function guardForwarding(env = process.env) {
  const frontSecret = env.BUILDPROOF_FRONT_SECRET || undefined;
  const isBehindProxy = Boolean(env.PUBLIC_URL);
  subscribe("http.server.request.start", (message) => {
    const { request, socket } =
      /** @type {{ request: import("node:http").IncomingMessage, socket: import("node:net").Socket }} */ (
        message
      );
    dropUntrustedForwarding(request.headers, { peer: socket.remoteAddress, frontSecret, isBehindProxy });
  });
}

/** @param {string | undefined} address */
function isLoopback(address) {
  return address === "::1" || /^(::ffff:)?127\./.test(address ?? "");
}

/** Compares digests, which are of one length, in constant time. */
function isSame(one, other) {
  const digest = (text) => createHash("sha256").update(text).digest();
  return timingSafeEqual(digest(one), digest(other));
}
