import { createServer } from "node:http";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { dropUntrustedForwarding, FRONT_HEADER, guardForwarding } from "./trusted-forwarding.mjs";

const secret = "a secret of this start";
const claims = {
  "x-forwarded-for": "198.51.100.7",
  "x-forwarded-proto": "https",
  forwarded: "for=198.51.100.7",
};
const local = { peer: "127.0.0.1", frontSecret: secret, isBehindProxy: false };

function leftOf(headers: Record<string, string>, setting: Parameters<typeof dropUntrustedForwarding>[1]) {
  const left: Record<string, string> = { host: "localhost", ...headers };
  dropUntrustedForwarding(left, setting);
  return left;
}

describe("what a caller claims about its own way here", () => {
  test("is dropped, whoever asks", () => {
    expect(leftOf(claims, local)).toEqual({ host: "localhost" });
    expect(leftOf(claims, { ...local, frontSecret: undefined })).toEqual({ host: "localhost" });
    expect(leftOf({ ...claims, [FRONT_HEADER]: "" }, { ...local, frontSecret: undefined })).toEqual({
      host: "localhost",
    });
    expect(leftOf({ ...claims, [FRONT_HEADER]: "guessed" }, local)).toEqual({ host: "localhost" });
  });

  test("is kept from the tablets' front on this machine, whose secret goes no further", () => {
    for (const peer of ["127.0.0.1", "::1", "::ffff:127.0.0.1"])
      expect(leftOf({ ...claims, [FRONT_HEADER]: secret }, { ...local, peer })).toEqual({
        host: "localhost",
        ...claims,
      });
    expect(leftOf({ ...claims, [FRONT_HEADER]: secret }, { ...local, peer: "192.168.1.9" })).toEqual({
      host: "localhost",
    });
  });

  test("is kept behind the proxy that PUBLIC_URL names", () => {
    expect(leftOf(claims, { ...local, isBehindProxy: true })).toEqual({ host: "localhost", ...claims });
  });
});

describe("a plain http server of the guarded process", () => {
  const server = createServer((request, response) => response.end(JSON.stringify(request.headers)));
  let url = "";
  beforeAll(async () => {
    guardForwarding({ BUILDPROOF_FRONT_SECRET: secret });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const address = server.address();
    url = `http://127.0.0.1:${typeof address === "object" ? address?.port : 0}`;
  });
  afterAll(() => {
    server.close();
  });

  test("never sees a forged address", async () => {
    const seen = await (await fetch(url, { headers: claims })).json();
    expect(seen).not.toHaveProperty("x-forwarded-for");
    expect(seen).not.toHaveProperty("forwarded");
  });

  test("sees the front's word for it", async () => {
    const seen = await (await fetch(url, { headers: { ...claims, [FRONT_HEADER]: secret } })).json();
    expect(seen).toMatchObject({ "x-forwarded-for": "198.51.100.7" });
    expect(seen).not.toHaveProperty(FRONT_HEADER);
  });
});
