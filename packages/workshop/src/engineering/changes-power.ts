import { itemFigures } from "./stored-figures";

/** Whether an item has figures that a forecast reads; figures that cannot be read are left for the forecast to tell. */
export function changesPower({ figures }: { readonly figures: unknown }): boolean {
  const read = itemFigures.safeParse(figures);
  return !read.success || Object.keys(read.data).length > 0;
}
