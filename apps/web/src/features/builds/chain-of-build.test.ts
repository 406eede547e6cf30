import type { SheetCapacity } from "@buildproof/workshop";
import { describe, expect, test } from "vitest";
import { chainPaths, weakestLink } from "./chain-of-build";

function capacity(link: string, demand: number, supply: number, safety = false): SheetCapacity {
  const met = demand <= supply;
  return {
    rule: link,
    link,
    name: link,
    unit: "kg/h",
    system: "fuel",
    safety,
    sentence: `${link}: asked ${demand} of ${supply}`,
    quantity: "",
    because: "",
    base: supply,
    supply,
    demand,
    reservePct: 0,
    asked: demand / supply,
    headroom: demand === 0 ? null : supply / demand - 1,
    shortBy: met ? null : 1 - supply / demand,
    met,
    suppliers: [],
    demanders: [],
  };
}

describe("the chain of a build", () => {
  test("draws fuel running in before the engine, and leaves out what nothing is asked of", () => {
    const paths = chainPaths([capacity("high-pressure-pump", 146, 133), capacity("gearbox", 0, 700)]);
    expect(paths.map(({ id }) => id)).toEqual(["air", "fuel"]);
    expect(paths[1]?.joinsBefore).toBe("engine");
    expect(paths[0]?.links.map(({ id }) => id)).toEqual(["air-in", "engine", "tyres"]);
    expect(paths[1]?.links[0]).toMatchObject({ grade: "stop", note: "short by 9 %" });
  });

  test("names the link that can do harm before one that is shorter but only holds back", () => {
    const weakest = weakestLink(
      [capacity("belt-drive", 40, 26), capacity("high-pressure-pump", 146, 133, true)],
      [],
    );
    expect(weakest?.linkId).toBe("high-pressure-pump");
    expect(weakest?.sentence).toContain("Also short: belt-drive by 35 %.");
  });

  test("names the most asked link when everything holds", () => {
    const weakest = weakestLink([capacity("gearbox", 700, 740), capacity("cooler", 50, 70)], []);
    expect(weakest?.linkId).toBe("gearbox");
    expect(weakest?.sentence).toMatch(/Everything holds\.$/);
  });

  test("has no weakest link when nothing is asked", () => {
    expect(weakestLink([capacity("gearbox", 0, 700)], [])).toBeNull();
  });
});
