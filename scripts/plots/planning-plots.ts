import { plan } from "@buildproof/planning";
import { madeWorkshop } from "@buildproof/planning/testing";
import type { LinePlot, PlotPoint } from "./line-plot";

const PASSES = 600;
const DAY = 24 * 60;

/** How a made workshop's plan gets shorter while it is searched, above what no plan can go below. */
export function planningPlot(): LinePlot {
  const workshop = madeWorkshop({ jobs: 24, hoists: 3, people: 5, dynos: 1, weeks: 12, spread: 1, seed: 4 });
  const search = (seed: number) => {
    const points: PlotPoint[] = [];
    const { lowerBound } = plan(
      { ...workshop, objective: "makespan" },
      {
        schedules: PASSES,
        seed,
        improved: ({ objective, schedules }) => {
          const before = points.at(-1)?.[1];
          if (before !== undefined) points.push([schedules, before]);
          points.push([schedules, objective / DAY]);
        },
      },
    );
    points.push([PASSES, points.at(-1)?.[1] ?? 0]);
    return { points, lowerBound };
  };
  const [one, other] = [search(1), search(2)];
  return {
    title: "24 made jobs: length of the plan while it is searched",
    x: { label: "passes over the tasks", ticks: [0, 100, 200, 300, 400, 500, 600] },
    y: { label: "days", ticks: [22, 24, 26, 28, 30, 32] },
    lines: [
      { label: "seed 1", points: one.points },
      { label: "seed 2", points: other.points, dash: "8 4" },
      {
        label: "no plan is shorter",
        points: [0, PASSES].map((at) => [at, one.lowerBound / DAY] as const),
        dash: "2 4",
      },
    ],
  };
}
