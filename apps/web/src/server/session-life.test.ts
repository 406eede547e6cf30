import { decode, encode } from "next-auth/jwt";
import { afterEach, expect, test, vi } from "vitest";
import { authOptions } from "./auth-options";

const secret = "a secret of this test";
const signedIn = { personId: "p", workshopId: "w", sessionCounter: 0 };
const start = new Date("2026-11-24T22:30:00Z");

afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

/** What a session made at the start is worth so many hours later; null when nothing. */
async function sessionAfter(hours: number) {
  vi.useFakeTimers({ now: start });
  const { maxAge } = authOptions.session ?? {};
  const token = await encode({ token: signedIn, secret, ...(maxAge === undefined ? {} : { maxAge }) });
  vi.setSystemTime(new Date(start.getTime() + hours * 3_600_000));
  return decode({ token, secret }).catch(() => null);
}

test("a session lasts a working day", async () => {
  expect(await sessionAfter(11.9)).toMatchObject(signedIn);
});

test("and no longer", async () => {
  expect(await sessionAfter(12.1)).toBeNull();
});

test("a cookie that somebody changed opens nothing", async () => {
  const token = await encode({ token: signedIn, secret });
  const changed = `${token.slice(0, -2)}${token.endsWith("A") ? "BB" : "AA"}`;
  expect(await decode({ token: changed, secret }).catch(() => null)).toBeNull();
});

test("and is one line in the server's record, without a stack", () => {
  const warned = vi.spyOn(console, "warn").mockImplementation(() => undefined);
  const failed = vi.spyOn(console, "error").mockImplementation(() => undefined);
  authOptions.logger?.error?.("JWT_SESSION_ERROR", new Error("decryption operation failed"));
  expect(warned.mock.calls).toEqual([["A session cookie that is not ours was turned away."]]);
  expect(failed).not.toHaveBeenCalled();
});

test("while any other trouble with signing in is told in full", () => {
  const failed = vi.spyOn(console, "error").mockImplementation(() => undefined);
  const trouble = new Error("no secret");
  authOptions.logger?.error?.("NO_SECRET", trouble);
  expect(failed.mock.calls).toEqual([["next-auth NO_SECRET", trouble]]);
});
