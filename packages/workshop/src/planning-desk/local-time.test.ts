import { describe, expect, test } from "vitest";
import { instantOfLocal, localOfInstant } from "./local-time";
import { spanWords } from "./time-words";

const zone = "Australia/Adelaide";

describe("a time typed at a workshop in Adelaide", () => {
  test("is meant on Adelaide's clock: half an hour off the whole hours, ten and a half ahead in summer", () => {
    // Source: IANA time zone database, Australia/Adelaide: UTC+9:30, daylight saving UTC+10:30.
    expect(instantOfLocal("2026-12-08T09:00", zone)).toEqual({
      ok: true,
      at: new Date("2026-12-07T22:30:00Z"),
    });
    expect(instantOfLocal("2026-07-08T09:00", zone)).toEqual({
      ok: true,
      at: new Date("2026-07-07T23:30:00Z"),
    });
  });

  test("is not taken when the clocks leave it out: the first Sunday in October, 02:00 to 03:00", () => {
    expect(instantOfLocal("2026-10-04T02:30", zone)).toEqual({ ok: false, problem: "does-not-exist" });
    expect(instantOfLocal("2026-10-04T03:00", zone)).toEqual({
      ok: true,
      at: new Date("2026-10-03T16:30:00Z"),
    });
  });

  test("is not taken when the clocks show it twice: the first Sunday in April, 02:00 to 03:00", () => {
    expect(instantOfLocal("2027-04-04T02:30", zone)).toEqual({ ok: false, problem: "is-double" });
    expect(instantOfLocal("2027-04-04T01:59", zone)).toEqual({
      ok: true,
      at: new Date("2027-04-03T15:29:00Z"),
    });
  });

  test("is not taken when it is no time at all", () => {
    for (const typed of ["", "tomorrow", "2026-02-30T09:00", "2026-12-08 09:00", "2026-12-08T25:00"])
      expect(instantOfLocal(typed, zone)).toEqual({ ok: false, problem: "not-a-time" });
  });

  test("comes back as it was typed", () => {
    const typed = instantOfLocal("2026-12-08T09:05", zone);
    expect(typed.ok && localOfInstant(typed.at, zone)).toBe("2026-12-08T09:05");
  });
});

test("a stretch of work names its second day only when there is one", () => {
  const from = new Date("2026-12-07T22:30:00Z");
  expect(spanWords(from, new Date("2026-12-08T06:30:00Z"), zone)).toBe("Tue 8 Dec, 09:00 to 17:00");
  expect(spanWords(from, new Date("2026-12-09T06:30:00Z"), zone)).toBe(
    "Tue 8 Dec, 09:00 to Wed 9 Dec, 17:00",
  );
});
