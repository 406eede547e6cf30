import { expect, test } from "vitest";
import { openWorkshopDatabase } from "../core/open-database";
import { newSecretToken } from "../core/secret-token";
import { demoNow } from "../testing/demo-moment";
import { demoWorkshop } from "../testing/demo-workshop";
import { newIssued, newLink } from "../testing/quote-story";
import { openCustomerLink } from "./open-customer-link";

const trial = demoWorkshop();
const minutes = (count: number) => new Date(demoNow.getTime() + count * 60_000);

async function open(token: string, address: string, at: Date = demoNow) {
  return openCustomerLink({ ...(await trial.as({ kind: "nobody" }, at)), address }, token);
}

test("after thirty wrong links an address rests for a quarter of an hour, even with the right one", async () => {
  const { token } = await newLink(trial, (await newIssued(trial, "dark-trim-pack")).versionId);
  for (let tried = 0; tried < 29; tried += 1) await open(newSecretToken().token, "192.0.2.50");
  expect((await open(token, "192.0.2.50", minutes(1))).ok).toBe(true);
  expect(await open("not a token", "192.0.2.50", minutes(1))).toEqual({ ok: false, because: "unknown" });

  const resting = { ok: false, because: "too-many-tries" };
  expect(await open(token, "192.0.2.50", minutes(1))).toEqual(resting);
  expect(await open(token, "192.0.2.50", minutes(14.9))).toEqual(resting);
  expect((await open(token, "192.0.2.51", minutes(1))).ok).toBe(true);
  expect((await open(token, "192.0.2.50", minutes(15))).ok).toBe(true);
  // A new stretch counts from the beginning.
  await open("not a token", "192.0.2.50", minutes(15));
  expect((await open(token, "192.0.2.50", minutes(16))).ok).toBe(true);
});

test("a restart and a second process do not forget wrong links", async () => {
  const address = "192.0.2.60";
  const context = { ...(await trial.as({ kind: "nobody" })), address };
  for (let tried = 0; tried < 15; tried += 1) await openCustomerLink(context, "not a token");
  const second = openWorkshopDatabase(trial.appUrl);
  try {
    const there = { ...context, database: second };
    await Promise.all(Array.from({ length: 15 }, () => openCustomerLink(there, "not a token")));
    for (const either of [context, there])
      expect(await openCustomerLink(either, "x")).toEqual({ ok: false, because: "too-many-tries" });
  } finally {
    await second.close();
  }
});

test("the application reads and changes the counts in no other way", async () => {
  const touch = (sql: string) => trial.database.asOutsider((tx) => tx.$executeRawUnsafe(sql));
  await expect(touch("select * from counted_try")).rejects.toThrow(/permission denied/);
  await expect(touch("delete from counted_try")).rejects.toThrow(/permission denied/);
});

test("counts that ended a day ago are swept away", async () => {
  await open("not a token", "192.0.2.70");
  await open("not a token", "192.0.2.71", minutes(25 * 60));
  expect(await trial.sql("select key from counted_try where key like '%192.0.2.7_'")).toEqual([
    { key: "wrong-link 192.0.2.71" },
  ]);
});
