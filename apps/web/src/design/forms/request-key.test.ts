import { expect, test } from "vitest";
import { requestKey } from "./request-key";

test("a request key is a version 4 UUID (layout of RFC 9562 section 5.4), fresh each time", () => {
  const keys = Array.from({ length: 200 }, requestKey);
  for (const key of keys)
    expect(key).toMatch(/^[\da-f]{8}-[\da-f]{4}-4[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/);
  expect(new Set(keys).size).toBe(keys.length);
});
