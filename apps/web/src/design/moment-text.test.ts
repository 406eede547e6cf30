import { expect, test } from "vitest";
import { momentText } from "./moment-text";

// Adelaide keeps UTC+9:30, and UTC+10:30 in summer (IANA time zone database).
test("an instant is shown by the workshop's clock, half hours and summer time included", () => {
  expect(momentText(new Date("2026-06-30T14:30:00Z"), "Australia/Adelaide", "time")).toBe("00:00");
  expect(momentText(new Date("2026-12-18T05:12:00Z"), "Australia/Adelaide", "time")).toBe("15:42");
  expect(momentText(new Date("2026-06-30T14:30:00Z"), "Australia/Adelaide", "day")).toMatch(
    /1 July? 2026|1 Jul 2026/,
  );
});
