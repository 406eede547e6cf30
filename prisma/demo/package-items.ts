import { catalogue } from "./catalogue/catalogue";

/** The items of a package. */
export function packageItems(code: string): readonly string[] {
  const bundle = catalogue.packages.find(({ id }) => id === code);
  if (!bundle) throw new Error(`the demo catalogue has no package ${code}`);
  return bundle.items;
}

/** The power that a package promises at the hubs, where it promises any. */
export function packagePromise(code: string): { readonly lowKw: number; readonly highKw: number } {
  const promise = catalogue.packages.find(({ id }) => id === code)?.promise;
  if (!promise) throw new Error(`the package ${code} promises no power`);
  return promise;
}
