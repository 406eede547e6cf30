import { describe, expect, test } from "vitest";
import { plan } from "../plan";
import { madeWorkshop } from "../testing/made-workshop";
import { planAside } from "./plan-aside";

const workshop = madeWorkshop({ jobs: 30, hoists: 3, people: 6, dynos: 2, weeks: 20, spread: 1, seed: 2 });

describe("planning in a thread of its own", () => {
  test("finds what planning here finds", async () => {
    const aside = await planAside(workshop, { schedules: 60, seed: 3, withinMs: 60_000 });
    expect(aside).toEqual(plan(workshop, { schedules: 60, seed: 3 }));
  });

  test("gives the best so far when it is called off, and told of every better one", async () => {
    const caller = new AbortController();
    const told: number[] = [];
    const found = await planAside(workshop, {
      withinMs: 60_000,
      signal: caller.signal,
      improved: ({ objective }) => {
        told.push(objective);
        if (told.length === 3) caller.abort();
      },
    });
    expect(told.length).toBeGreaterThanOrEqual(3);
    expect(found.objective).toBe(told.at(-1));
    expect(told).toEqual([...told].sort((a, b) => b - a));
  });

  test("refuses what planning refuses", async () => {
    const cycle = {
      resources: [],
      tasks: [
        { id: "a", duration: 1, after: [{ task: "b" }] },
        { id: "b", duration: 1, after: [{ task: "a" }] },
      ],
    };
    await expect(planAside(cycle)).rejects.toMatchObject({ code: "cycle" });
  });
});
