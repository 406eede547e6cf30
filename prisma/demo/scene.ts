import type { CatalogueRows } from "./catalogue-rows";
import type { DemoWorkshop } from "./demo-workshop";
import type { MadeFiles } from "./made-files";
import type { Staff } from "./workshop-rows";

/** Everything that one part of the demo is built from. */
export type Scene = {
  readonly workshop: DemoWorkshop;
  readonly catalogue: CatalogueRows;
  readonly staff: Staff;
  readonly files: MadeFiles;
};

/** The same scene with a source of chance of its own. */
export function sceneWithRandom(scene: Scene, label: string): Scene {
  return { ...scene, workshop: scene.workshop.withRandom(label) };
}
