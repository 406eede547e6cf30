import { expect, test } from "vitest";
import { linkTries } from "./link-tries";

test("after many wrong links an address rests, and no other does", async () => {
  for (let tried = 0; tried < 29; tried += 1) await linkTries.countWrong("192.0.2.7");
  expect(await linkTries.areSpent("192.0.2.7")).toBe(false);
  await linkTries.countWrong("192.0.2.7");
  expect(await linkTries.areSpent("192.0.2.7")).toBe(true);
  // One more is counted without complaint.
  await linkTries.countWrong("192.0.2.7");
  expect(await linkTries.areSpent("192.0.2.8")).toBe(false);
});
