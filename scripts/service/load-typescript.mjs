import { pathToFileURL } from "node:url";

/** Imports a TypeScript module of this repository; only after the packages are installed. */
export async function loadTypeScript(file) {
  const { register } = await import("tsx/esm/api");
  register();
  return import(pathToFileURL(file).href);
}
