import { isDeepStrictEqual } from "node:util";
import { storedItem } from "../../engineering/stored-chassis";
import { itemFigures } from "../../engineering/stored-figures";
import { findComponent } from "./components";
import { type FigureFault, readFigures } from "./read-figures";
import { typedFigures } from "./typed-figures";

/** What is wrong with the figures of an item that is such a component; empty when the engineering can use them. */
export function figureFaults(componentCode: string, figures: unknown): readonly FigureFault[] {
  const component = findComponent(componentCode);
  if (!component)
    return [
      {
        path: "",
        sentence: `There is no component “${componentCode}”. Choose what the item is from the list.`,
      },
    ];
  const read = readFigures(component, typedFigures(component, figures));
  if ("faults" in read) return read.faults;
  if (!isDeepStrictEqual(read.figures, figures))
    return [
      {
        path: "",
        sentence: `It has figures that “${component.name}” does not have. Choose what it really is, or drop them.`,
      },
    ];
  if (itemFigures.safeParse(figures).success && storedItem.safeParse(figures).success) return [];
  return [
    {
      path: "",
      sentence: "The figures belong together: fill in all of those in one group, or none of them.",
    },
  ];
}
