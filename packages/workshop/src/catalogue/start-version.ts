import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command } from "../core/use-case";

export const versionTitle = z
  .string()
  .trim()
  .min(1, "Say in a few words what this version is for.")
  .max(120, "Keep the title under 120 characters.");

/** Opens a draft: changes are gathered in it, tried, and published together. */
export const startVersion = command({
  name: "catalogue.start-version",
  permission: "catalogue:write",
  input: z.strictObject({ title: versionTitle }),
  async run({ tx, workshopId, person, now, audit }, { title }) {
    const id = newId();
    await tx.catalogueVersion.create({
      data: { id, workshopId, title, createdById: person.id, createdAt: now },
    });
    audit({ entity: "catalogue-version", entityId: id, after: { title } });
    return ok({ versionId: id });
  },
});
