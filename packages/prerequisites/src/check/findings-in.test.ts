import fc from "fast-check";
import { expect, test } from "vitest";
import { prepare } from "../model/prepare";
import { situation } from "../model/situation";
import { randomQuestion } from "../testing/random-model";
import { findingsIn } from "./findings-in";

test("looking only at what a selection touches finds what looking at every rule finds", () => {
  fc.assert(
    fc.property(randomQuestion(9), ({ model, chosen = [], facts = {} }) => {
      const ready = prepare(model);
      const here = situation(chosen, facts);
      const plainly = ready.constraints.flatMap(({ findingIn }) => findingIn(here) ?? []);
      expect(findingsIn(ready, here)).toEqual(plainly);
      // Asked again, with what the first question left behind.
      expect(findingsIn(ready, situation([], facts))).toEqual(
        ready.constraints.flatMap(({ findingIn }) => findingIn(situation([], facts)) ?? []),
      );
    }),
    { numRuns: 500 },
  );
});
