import { expect, test } from "vitest";
import { trySentences } from "./try-sentences";

const same = { gains: [], loses: [], beforeMinor: 100, afterMinor: 100 };

test("what a draft would do is said kind by kind, and nothing where nothing differs", () => {
  expect(trySentences([], "AUD")).toEqual([]);
  const said = trySentences(
    [
      { ...same, is: "quote", gains: ["Missing: cooler"] },
      { ...same, is: "quote", gains: ["Missing: cooler"], loses: ["Gearbox: short"] },
      { ...same, is: "draft", gains: ["A and B cannot go together"], afterMinor: 12_345 },
      { ...same, is: "draft", afterMinor: 50 },
      { ...same, is: "sample", afterMinor: 200 },
    ],
    "AUD",
  );
  expect(said).toEqual([
    "One sample build would cost otherwise today, by +$1.00 with tax.",
    "Two open quotes would gain a missing item.",
    "One open quote would lose a finding.",
    "One build not quoted yet would gain a finding.",
    "Two builds not quoted yet would cost otherwise today, by \u2212$0.50 to +$122.45 with tax.",
  ]);
});
