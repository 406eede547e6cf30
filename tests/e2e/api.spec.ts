import type { APIRequestContext } from "@playwright/test";
import { checkAccessibility, expect, test } from "./fixtures";

const path = "/api/v1/calculations/unit-convert";
const question = { value: 35, from: "psi", to: "kPa" };

function ask(request: APIRequestContext, token: string, data: unknown = question, at = path) {
  return request.post(at, { data, headers: { Authorization: `Bearer ${token}` } });
}

test("the owner gives a program a token, the program calculates with it, and the owner takes it back", async ({
  openAs,
}) => {
  const owner = await openAs("owner");
  const program = (await openAs("nobody")).request;
  await owner.goto("/people");
  await owner.getByRole("main").getByRole("link", { name: "Settings" }).click();
  await owner.getByLabel("Name of the program").fill("Price list");
  await owner.getByRole("button", { name: "Make a token" }).click();
  const token = await owner.getByLabel("The token of Price list").inputValue();
  await checkAccessibility(owner);

  const answer = await ask(program, token);
  expect(answer.status()).toBe(200);
  // 1 psi is 6.894757 kPa: NIST SP 811 (2008), appendix B.8.
  expect((await answer.json()).value).toBeCloseTo(35 * 6.894757, 4);

  const unknown = await ask(program, token, question, "/api/v1/calculations/no-such-thing");
  expect(unknown.status()).toBe(404);
  expect(await unknown.json()).toMatchObject({ error: { code: "unknown-calculation", path: "" } });
  const bad = await ask(program, token, { ...question, value: "much" });
  expect(bad.status()).toBe(422);
  expect(await bad.json()).toMatchObject({ error: { path: "value" } });

  await owner.reload();
  const row = owner.getByRole("row", { name: /Price list/ });
  await expect(row).not.toContainText("never");
  await row.getByRole("button", { name: "Revoke" }).click();
  await expect(row).toContainText("revoked");
  const revoked = await ask(program, token);
  expect(revoked.status()).toBe(401);
  expect(await revoked.json()).toMatchObject({ error: { code: "token-revoked" } });
});

test("a program without a token, or with a wrong one, is told what to send", async ({ openAs }) => {
  const program = (await openAs("nobody")).request;
  const none = await program.post(path, { data: question });
  expect(none.status()).toBe(401);
  expect(none.headers()["www-authenticate"]).toBe("Bearer");
  expect(await none.json()).toMatchObject({ error: { code: "no-caller" } });
  const wrong = await ask(program, "x".repeat(43));
  expect(wrong.status()).toBe(401);
  expect(await wrong.json()).toMatchObject({ error: { code: "token-unknown" } });
});

test("a program that asks too often is told when to go on", async ({ openAs }) => {
  const owner = await openAs("owner");
  const program = (await openAs("nobody")).request;
  await owner.goto("/settings");
  await owner.getByLabel("Name of the program").fill("Too busy");
  await owner.getByRole("button", { name: "Make a token" }).click();
  const token = await owner.getByLabel("The token of Too busy").inputValue();
  let last = await ask(program, token);
  for (let calls = 1; calls <= 240 && last.status() === 200; calls += 1) last = await ask(program, token);
  expect(last.status()).toBe(429);
  const wait = Number(last.headers()["retry-after"]);
  expect(wait).toBeGreaterThan(0);
  expect(wait).toBeLessThanOrEqual(60);
  expect(await last.json()).toMatchObject({ error: { code: "too-many-calls" } });
});

test("nobody but the owner sees the settings", async ({ openAs }) => {
  const manager = await openAs("manager");
  await manager.goto("/settings");
  await expect(manager.getByText("Your role does not include this")).toBeVisible();
  await checkAccessibility(manager);
});
