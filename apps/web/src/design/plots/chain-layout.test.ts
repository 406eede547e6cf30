import { describe, expect, test } from "vitest";
import { alongBar, chainLayout } from "./chain-layout";

const link = (id: string) => ({ id, name: id });
const air = {
  id: "air",
  title: "Air and torque",
  links: ["air in", "blower", "cooler", "engine", "gearbox"].map(link),
};

function columns(fuelLinks: readonly string[], joinsBefore?: string) {
  const fuel = {
    id: "fuel",
    title: "Fuel",
    links: fuelLinks.map(link),
    ...(joinsBefore ? { joinsBefore } : {}),
  };
  const layout = chainLayout([air, fuel]);
  return layout.paths.map((placed) => placed.links.map(({ column }) => column));
}

describe("the chain", () => {
  test("brings the fuel in just before the engine", () => {
    expect(columns(["pump", "injectors"], "engine")).toEqual([
      [1, 2, 3, 4, 5],
      [2, 3],
    ]);
  });

  test("moves the air along when the fuel's way is longer", () => {
    expect(columns(["tank", "high pressure", "injectors", "window"], "engine")).toEqual([
      [2, 3, 4, 5, 6],
      [1, 2, 3, 4],
    ]);
  });

  test("draws a path that joins nothing from the left", () => {
    expect(columns(["a", "b"])[1]).toEqual([1, 2]);
    expect(columns(["a", "b"], "no such link")[1]).toEqual([1, 2]);
  });

  test("has nothing to draw without links", () => {
    expect(chainLayout([])).toEqual({ columns: 0, paths: [] });
  });
});

test("a bar shows what is asked beyond the supply, up to its end", () => {
  expect(alongBar(1)).toBe(0.8);
  expect(alongBar(1.1)).toBeCloseTo(0.88);
  expect(alongBar(9)).toBe(1);
  expect(alongBar(-1)).toBe(0);
});
