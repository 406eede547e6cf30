import { proveCatalogue } from "@buildproof/prerequisites";
import { clingoSearch } from "@buildproof/prerequisites/solver";
import { completePlainly } from "@buildproof/prerequisites/testing";
import {
  factsOf,
  itemsThatDoNotFit,
  prerequisiteModel,
} from "../../prisma/demo/catalogue/prerequisite-model";
import type { Benchmark } from "./benchmark";

const modelId = "ridgewold-57";
const model = prerequisiteModel(modelId);
const barred = itemsThatDoNotFit(modelId);
const facts = { ...factsOf(modelId), fuelOctaneRon: 98, inspectionPassed: 1 };
const fitting = model.items.map(({ id }) => id).filter((id) => !barred.includes(id));

/** All that is proven of one vehicle, against one of its questions put to the same solver item by item. */
export const catalogueProofBenchmark: Benchmark = {
  name: "proof of the demo catalogue",
  rounds: 3,
  ours: {
    name: "proveCatalogue, one vehicle",
    run: async () => {
      const vehicles = { facts: { ...facts, fuelOctaneRon: { oneOf: [91, 95, 98] } }, barred };
      return (await proveCatalogue({ model }, vehicles, clingoSearch(60_000))).counts;
    },
  },
  baseline: {
    name: "can each item be chosen, plainly",
    run: async () => {
      const verdicts: string[] = [];
      for (const id of fitting) verdicts.push(await completePlainly({ model, chosen: [id], barred, facts }));
      return verdicts;
    },
  },
};
