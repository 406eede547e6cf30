import { expect, test } from "vitest";
import { newSecretToken } from "../core/secret-token";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { admitCaller } from "./admit-caller";
import { listApiTokens } from "./list-api-tokens";
import { makeApiToken } from "./make-api-token";
import { revokeApiToken } from "./revoke-api-token";

const trial = demoWorkshop();
const seconds = (count: number) => new Date(demoNow.getTime() + count * 1000);

async function made(name: string) {
  const { token, tokenHash } = newSecretToken();
  return { token, ...(await trial.done("owner", makeApiToken, { name, tokenHash })) };
}

async function call(authorisation: string | null, address: string, at = demoNow) {
  return admitCaller({ ...(await trial.as({ kind: "nobody" }, at)), address }, authorisation);
}

test("a token lets a program in until the owner revokes it, and its last use is noted", async () => {
  const { token, tokenId } = await made("Price list");
  expect(await call(`Bearer ${token}`, "192.0.2.10", seconds(5))).toEqual({ ok: true, value: null });
  const find = async (who: "owner" | "gulfOwner") =>
    (await trial.done(who, listApiTokens, {})).find(({ id }) => id === tokenId);
  expect(await find("owner")).toMatchObject({ name: "Price list", lastUsedAt: seconds(5), revokedAt: null });
  expect(await find("gulfOwner")).toBeUndefined();
  await trial.done("owner", revokeApiToken, { tokenId });
  await trial.done("owner", revokeApiToken, { tokenId });
  expect(await call(`bearer ${token}`, "192.0.2.10", seconds(99))).toMatchObject({
    refusal: { code: "token-revoked" },
  });
  expect(await find("owner")).toMatchObject({ lastUsedAt: seconds(5), revokedAt: demoNow });
  const lines = await trial.sql("select use_case from audit_event where entity_id = $1 order by use_case", [
    tokenId,
  ]);
  expect(lines).toEqual([{ use_case: "api.make-token" }, { use_case: "api.revoke-token" }]);
});

test("the token itself is nowhere in the database", async () => {
  const { token, tokenId } = await made("Kept as a hash");
  const [row] = await trial.sql("select to_jsonb(t)::text as kept from api_token t where id = $1", [tokenId]);
  expect(row?.kept).toContain("Kept as a hash");
  expect(row?.kept).not.toContain(token);
});

test("without a token or with a wrong one nobody gets in; a signed-in person does", async () => {
  const code = async (authorisation: string | null) => {
    const result = await call(authorisation, "192.0.2.11");
    return result.ok ? "open" : result.refusal.code;
  };
  expect(await code(null)).toBe("no-caller");
  expect(await code("Basic bm9vcjp4")).toBe("no-caller");
  expect(await code("Bearer short")).toBe("token-unknown");
  expect(await code(`Bearer ${newSecretToken().token}`)).toBe("token-unknown");
  expect((await admitCaller(await trial.as("technician"), null)).ok).toBe(true);
});

test("a token is let rest after 120 calls in a minute, and no other is", async () => {
  const busy = await made("Busy");
  const calm = await made("Calm");
  for (let calls = 0; calls < 120; calls += 1)
    expect((await call(`Bearer ${busy.token}`, "192.0.2.12")).ok).toBe(true);
  expect(await call(`Bearer ${busy.token}`, "192.0.2.13", seconds(20))).toMatchObject({
    refusal: { code: "too-many-calls", data: { retryAfterS: 40 } },
  });
  expect((await call(`Bearer ${calm.token}`, "192.0.2.12", seconds(20))).ok).toBe(true);
  expect((await call(`Bearer ${busy.token}`, "192.0.2.12", seconds(60))).ok).toBe(true);
});

test("an address is let rest after 240 calls in a minute, wrong ones too", async () => {
  for (let calls = 0; calls < 240; calls += 1)
    expect(await call(null, "192.0.2.14")).toMatchObject({ refusal: { code: "no-caller" } });
  expect(await call(null, "192.0.2.14")).toMatchObject({ refusal: { code: "too-many-calls" } });
  expect(await call(null, "192.0.2.15")).toMatchObject({ refusal: { code: "no-caller" } });
});

test("two tokens in use have two names, a revoked one's may be used again, and another workshop's is out of reach", async () => {
  const { tokenId } = await made("Spreadsheet");
  const again = { name: " spreadsheet ", tokenHash: newSecretToken().tokenHash };
  expect(await trial.refused("owner", makeApiToken, again)).toMatchObject({ code: "token-name-taken" });
  expect(await trial.refused("owner", makeApiToken, { ...again, name: " " })).toMatchObject({
    field: "name",
  });
  expect(await trial.refused("gulfOwner", revokeApiToken, { tokenId })).toMatchObject({
    code: "token-not-found",
  });
  await trial.done("owner", revokeApiToken, { tokenId });
  await trial.done("owner", makeApiToken, again);
});
