import { expect, test } from "vitest";
import { searchResultsOf } from "./search-results-of";

test("what is found leads to its page, a part to the builds that have it", () => {
  const { groups } = searchResultsOf({
    groups: [
      { kind: "quote", hits: [{ id: "q1", title: "Quote 1042", detail: "" }] },
      { kind: "item", hits: [{ id: "i1", title: "Oil & filter", detail: "" }] },
    ],
    offers: [],
  });
  expect(groups.flatMap(({ hits }) => hits.map(({ href }) => href))).toEqual([
    "/quotes/q1",
    "/builds?q=Oil%20%26%20filter",
  ]);
});

test("an unknown plate offers a new vehicle that has it already", () => {
  const { offers } = searchResultsOf({ groups: [], offers: [{ kind: "new-vehicle", plate: "9ZZ 8YY" }] });
  expect(offers).toEqual([
    { title: "New vehicle with plate 9ZZ 8YY", href: "/vehicles/new?plate=9ZZ%208YY" },
  ]);
});
