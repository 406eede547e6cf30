import { describe, expect, test } from "vitest";
import { destinationsFor, homeFor, isWithin, splitForPhone } from "./navigation";

describe("the way through the workshop", () => {
  test("a technician sees the floor first and no prices", () => {
    const titles = destinationsFor(["technician"]).map((place) => place.title);
    expect(titles).toEqual(["Floor", "Jobs", "Dyno", "Catalogue"]);
    expect(homeFor(["technician"])).toBe("/floor");
  });

  test("only an owner sees the owner's page", () => {
    expect(destinationsFor(["desk", "manager", "technician"]).map((place) => place.href)).not.toContain(
      "/owner",
    );
    expect(destinationsFor(["owner"]).map((place) => place.href)).toContain("/owner");
  });

  test("a person of several roles sees each place once", () => {
    const hrefs = destinationsFor(["desk", "manager", "owner"]).map((place) => place.href);
    expect(new Set(hrefs).size).toBe(hrefs.length);
  });

  test("a person without a role can still reach the own account", () => {
    expect(homeFor([])).toBe("/account");
  });
});

test("a place is current on its own pages only", () => {
  const jobs = { href: "/jobs", title: "Jobs" };
  expect(isWithin("/jobs/318", jobs)).toBe(true);
  expect(isWithin("/jobs-board", jobs)).toBe(false);
});

test("a phone never hides just one place behind a word", () => {
  const places = Array.from({ length: 6 }, (_, n) => ({ href: `/${n}`, title: `${n}` }));
  expect(splitForPhone(places.slice(0, 5)).more).toEqual([]);
  expect(splitForPhone(places)).toMatchObject({ shown: { length: 4 }, more: { length: 2 } });
});
