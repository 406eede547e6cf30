import { decode, encode } from "next-auth/jwt";
import { afterEach, expect, test, vi } from "vitest";
import { authOptions } from "./auth-options";

const secret = "a secret of this test";
const signedIn = { personId: "p", workshopId: "w", sessionCounter: 0 };
const start = new Date("2026-11-24T22:30:00Z");

afterEach(() => {
  vi.useRealTimers();
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
