import { writeFileSync } from "node:fs";
import path from "node:path";
import { loadTypeScript } from "./service/load-typescript.mjs";

// Draws the plots of docs/engineering again, after a calculation has changed: node scripts/draw-plots.mjs
const { engineeringPlots } = await loadTypeScript(
  path.join(import.meta.dirname, "plots", "engineering-plots.ts"),
);
const folder = path.join(import.meta.dirname, "..", "docs", "engineering", "plots");
for (const [name, svg] of engineeringPlots()) writeFileSync(path.join(folder, name), svg);
