import { z } from "zod";
import { atField } from "../core/at-field";
import { ok, type Result } from "../core/result";
import { revision } from "../core/revision";
import { command, type PersonWork } from "../core/use-case";
import { type AssumptionName, assumptionNames, rangeOf } from "./assumption-names";
import { assumptionWords } from "./assumption-words";
import { refuseEngineering } from "./refuse-engineering";
import { type AssumptionChanges, storedAssumptions } from "./stored-assumptions";

const seen = {
  buildId: z.uuid("Open the build again."),
  revision,
  name: z.enum(assumptionNames, "Choose an assumption from the list."),
};

type Changed = { readonly revision: number; readonly name: AssumptionName; readonly value: number | null };

/** Puts another figure in the place of a usual one, for this build alone and with its reason. */
export const changeAssumption = command({
  name: "engineering.change-assumption",
  permission: "engineering:assume",
  input: z.strictObject({
    ...seen,
    value: z.number("Type the figure as a number."),
    reason: z
      .string()
      .trim()
      .min(5, "Say why this build differs, so that whoever reads the quote understands.")
      .max(300, "Say it in at most 300 characters."),
  }),
  async run(work, { buildId, revision: known, name, value, reason }): Promise<Result<Changed>> {
    const [, least, most] = rangeOf(name);
    const { label, unit } = assumptionWords[name];
    if (value < least || value > most)
      return atField("value", refuseEngineering("assumption-out-of-range", { label, least, most, unit }));
    const before = await read(work, buildId);
    if (!before) return refuseEngineering("build-not-found");
    const change = { value, reason, by: work.person.name, at: work.now.toISOString() };
    return write(work, buildId, known, { name, value, before, after: { ...before, [name]: change } });
  },
});

/** Gives a figure back to what is usual. */
export const resetAssumption = command({
  name: "engineering.reset-assumption",
  permission: "engineering:assume",
  input: z.strictObject(seen),
  async run(work, { buildId, revision: known, name }): Promise<Result<Changed>> {
    const before = await read(work, buildId);
    if (!before) return refuseEngineering("build-not-found");
    if (!before[name])
      return refuseEngineering("assumption-not-changed", { label: assumptionWords[name].label });
    const { [name]: _, ...after } = before;
    return write(work, buildId, known, { name, value: null, before, after });
  },
});

async function read({ tx }: PersonWork, buildId: string): Promise<AssumptionChanges | null> {
  const build = await tx.build.findUnique({ where: { id: buildId }, select: { assumptions: true } });
  return build && storedAssumptions.parse(build.assumptions);
}

type Writing = {
  readonly name: AssumptionName;
  readonly value: number | null;
  readonly before: AssumptionChanges;
  readonly after: AssumptionChanges;
};

async function write(
  { tx, now, audit }: PersonWork,
  buildId: string,
  known: number,
  { name, value, before, after }: Writing,
): Promise<Result<Changed>> {
  const { count } = await tx.build.updateMany({
    where: { id: buildId, revision: known },
    data: { assumptions: after, updatedAt: now, revision: { increment: 1 } },
  });
  if (count === 0) return refuseEngineering("stale");
  audit({
    entity: "build",
    entityId: buildId,
    before: { assumption: { [name]: before[name] ?? null } },
    after: { assumption: { [name]: after[name] ?? null } },
  });
  return ok({ revision: known + 1, name, value });
}
