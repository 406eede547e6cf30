import { z } from "zod";
import { atField } from "../core/at-field";
import { ok, type Result } from "../core/result";
import { revision } from "../core/revision";
import { command, query } from "../core/use-case";
import { assessPackage, type ModelRow } from "./bundle/assess-package";
import { copyContent, type NotCarried, notCarried, type Replacements } from "./bundle/copy-content";
import { packageDraft } from "./bundle/package-draft";
import { packageMargin } from "./bundle/package-margin";
import { type PackagesSetting, readPackages } from "./bundle/read-packages";
import { codeFrom } from "./code-from";
import type { ContentOf } from "./part-content";
import { refuseCatalogue } from "./refuse-catalogue";
import { writePart } from "./write-part";

const asked = {
  code: z.string().max(60),
  modelCode: z.string().min(1, "Choose the vehicle to copy it to.").max(60),
  versionId: z.uuid("Open the draft again.").nullable(),
  /** By the item that does not carry over: what takes its place, or null to leave it out. */
  replacements: z.record(z.string(), z.string().max(60).nullable()),
};

/** What of a package does not carry over to another vehicle, what could take its place, and what would come of it. */
export const planCopy = query({
  name: "catalogue.plan-copy",
  permission: "catalogue:write",
  input: z.strictObject(asked),
  async run({ tx }, input) {
    const found = await findCopy(await readPackages(tx, input.versionId), input);
    if (!found.ok) return found;
    const { bundle, model, setting, missing } = found.value;
    const replacements = settled(missing, input.replacements);
    const copy = copyContent(bundle, model.code, bundle.name, replacements);
    const on = assessPackage(setting.catalogue, setting.site, model, copy);
    return ok({
      name: bundle.name,
      model: { code: model.code, name: model.name },
      draft: setting.draft,
      currency: setting.site.currency,
      missing: missing.map((each) => ({ ...each, instead: replacements[each.code] ?? null })),
      carried:
        new Set([...bundle.items, ...bundle.choices.flatMap(({ items }) => items), ...bundle.options]).size -
        missing.length,
      on: { ...on, margin: packageMargin(on.ledger) },
    });
  },
});

/** Copies a package to another vehicle, into a draft. A power that the forecast does not support is not promised. */
export const copyPackage = command({
  name: "catalogue.copy-package",
  permission: "catalogue:write",
  input: z.strictObject({
    ...asked,
    revision,
    name: z.string().trim().min(1, "Give the copy a name.").max(80, "Keep the name under 80 characters."),
  }),
  async run(work, input) {
    const found = await findCopy(await readPackages(work.tx, input.versionId), input);
    if (!found.ok) return found;
    const { bundle, model, setting, missing } = found.value;
    const stray = Object.values(settled(missing, input.replacements)).find(
      (code) => code !== null && !setting.state.parts.item.has(code),
    );
    if (stray) return refuseCatalogue("part-unknown", { code: stray });
    const copy = copyContent(bundle, model.code, input.name, settled(missing, input.replacements));
    const on = assessPackage(setting.catalogue, setting.site, model, copy);
    if (on.doesNotFit.length > 0)
      return refuseCatalogue("copy-does-not-fit", {
        model: model.name,
        items: on.doesNotFit.map(({ name }) => name),
      });
    if (copy.items.length === 0 && copy.choices.length === 0) return refuseCatalogue("package-empty");
    const content = on.promise.stands === "not-kept" ? withoutPower(copy) : copy;
    const draft = await packageDraft(work, input, `${bundle.name} for the ${model.name}`.slice(0, 120));
    if (!draft.ok) return draft;
    const code = codeFrom(`${input.name} ${model.code}`);
    const written = await writePart(work, {
      ...draft.value,
      part: "package",
      code,
      isNew: true,
      after: content,
    });
    if (!written.ok) return written.refusal.code === "code-taken" ? atField("name", written) : written;
    return ok({ versionId: draft.value.versionId, code, promiseDropped: content.promise !== copy.promise });
  },
});

type Found = {
  readonly bundle: ContentOf<"package">;
  readonly model: ModelRow;
  readonly setting: PackagesSetting;
  readonly missing: readonly NotCarried[];
};

async function findCopy(
  read: Result<PackagesSetting>,
  { code, modelCode }: { readonly code: string; readonly modelCode: string },
): Promise<Result<Found>> {
  if (!read.ok) return read;
  const setting = read.value;
  const bundle = setting.state.parts.package.get(code);
  if (!bundle) return refuseCatalogue("package-not-found");
  const model = setting.models.find((each) => each.code === modelCode);
  if (!model) return atField("modelCode", refuseCatalogue("model-unknown"));
  if (bundle.models.length === 0 || bundle.models.includes(modelCode))
    return atField(
      "modelCode",
      refuseCatalogue("copy-there-already", { package: bundle.name, model: model.name }),
    );
  return ok({ bundle, model, setting, missing: notCarried(setting.catalogue, bundle, modelCode) });
}

/** What was said of each item that does not carry over; where nothing was, the nearest proposal. */
function settled(missing: readonly NotCarried[], said: Replacements): Replacements {
  return Object.fromEntries(
    missing.map(({ code, proposals }) => [
      code,
      said[code] === undefined ? (proposals[0]?.code ?? null) : said[code],
    ]),
  );
}

function withoutPower(bundle: ContentOf<"package">): ContentOf<"package"> {
  const towKg = bundle.promise?.towKg;
  return { ...bundle, promise: towKg === undefined ? null : { towKg } };
}
