import { chassisComponents } from "./chassis-components";
import { engineComponents } from "./engine-components";
import { type Component, component } from "./figure-field";

/** What an item can be on the vehicle, in the order of the build sheet; the last has no figures at all. */
export const components: readonly Component[] = [
  ...engineComponents,
  ...chassisComponents,
  component("", "Nothing in particular"),
];

/** Null for a code that is none of them. */
export function findComponent(code: string): Component | null {
  return components.find((each) => each.code === code) ?? null;
}
