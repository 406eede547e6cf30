import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { engineeringPlots } from "./engineering-plots";

const plots = engineeringPlots();

test.each([...plots.keys()])(
  "%s is what the calculations draw today (node scripts/draw-plots.mjs)",
  (name) => {
    const drawn = readFileSync(new URL(`../../docs/engineering/plots/${name}`, import.meta.url), "utf8");
    expect(drawn).toBe(plots.get(name));
  },
);
