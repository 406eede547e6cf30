import { z } from "zod";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { type PartKind, partContent } from "./part-content";
import { partCode, writePart } from "./write-part";

function changeOf<Part extends PartKind>(part: Part) {
  return z.strictObject({
    versionId: z.uuid("Open the draft again."),
    revision,
    part: z.literal(part),
    code: partCode,
    /** The part was not there before. */
    isNew: z.boolean().default(false),
    /** Null takes it out of the catalogue. */
    after: partContent[part].nullable(),
  });
}

/** Writes one part of a draft: as it shall be, or gone. */
export const changePart = command({
  name: "catalogue.change-part",
  permission: "catalogue:write",
  input: z.discriminatedUnion("part", [
    changeOf("item"),
    changeOf("group"),
    changeOf("rule"),
    changeOf("package"),
    changeOf("operation"),
    changeOf("access"),
  ]),
  run: (work, input) => writePart(work, input),
});
