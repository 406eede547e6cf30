import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command, query } from "../core/use-case";
import { storeChanges } from "./draft-changes";
import { importInput, readFiles } from "./exchange/read-files";
import { refuseCatalogue } from "./refuse-catalogue";
import { versionTitle } from "./start-version";

/** 50,000 rows on a small machine that does other work beside it. */
const LONGEST_MS = 120_000;

/** Says everything that an import would do, and everything that is wrong with it; does none of it. */
export const checkImport = query({
  name: "catalogue.check-import",
  permission: "catalogue:write",
  timeoutMs: LONGEST_MS,
  input: z.strictObject(importInput),
  async run({ tx }, input) {
    const read = await readFiles(tx, input);
    return read.ok ? ok(read.value.report) : read;
  },
});

/** Makes a draft of an import that was looked at: all of it, or none where anything is wrong. */
export const importCatalogue = command({
  name: "catalogue.import",
  permission: "catalogue:write",
  timeoutMs: LONGEST_MS,
  input: z.strictObject({
    ...importInput,
    title: versionTitle,
    /** The fingerprint of the report that was looked at. */
    seen: z.string().length(64, "Check the files first."),
  }),
  async run({ tx, workshopId, person, now, audit }, { title, seen, ...input }) {
    const read = await readFiles(tx, input);
    if (!read.ok) return read;
    const { report, changes } = read.value;
    if (report.problems.count > 0)
      return refuseCatalogue("import-has-problems", { count: report.problems.count });
    if (changes.length === 0) return refuseCatalogue("import-changes-nothing");
    if (report.fingerprint !== seen) return refuseCatalogue("import-differs");
    const id = newId();
    await tx.catalogueVersion.create({
      data: { id, workshopId, title, createdById: person.id, createdAt: now },
    });
    await storeChanges(tx, workshopId, id, now, changes);
    const files = input.files.map((file) => file.toJSON());
    audit({ entity: "catalogue-version", entityId: id, after: { title, changes: changes.length, files } });
    return ok({ versionId: id, changes: changes.length });
  },
});
