import { expect, test } from "vitest";
import { wayBack } from "./way-back";

test("after signing in a person comes back to the page they asked for", () => {
  expect(wayBack("/quotes/42?version=2")).toBe("/quotes/42?version=2");
});

test.each([
  undefined,
  "",
  "https://elsewhere.example",
  "//elsewhere.example",
  "/\\elsewhere.example",
  "/\n/x",
  "javascript:x",
  "/sign-in",
])("and never to somebody else's address: %j", (next) => {
  expect(wayBack(next)).toBe("/");
});
