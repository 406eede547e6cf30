import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { assessPackage } from "./bundle/assess-package";
import { packageMargin } from "./bundle/package-margin";
import { readPackages } from "./bundle/read-packages";
import { refuseCatalogue } from "./refuse-catalogue";

const versionId = z.uuid("Open the draft again.").nullable();

/** The packages as they stand, or as a draft would have them. */
export const listPackages = query({
  name: "catalogue.list-packages",
  permission: "catalogue:write",
  input: z.strictObject({ versionId }),
  async run({ tx }, input) {
    const read = await readPackages(tx, input.versionId);
    if (!read.ok) return read;
    const { state, models, draft } = read.value;
    const nameOf = (code: string) => models.find((model) => model.code === code)?.name ?? code;
    return ok({
      draft,
      models: models.map(({ code, name }) => ({ code, name })),
      items: [...state.parts.item].map(([code, { name }]) => ({ code, name })),
      packages: [...state.parts.package].map(([code, bundle]) => ({
        code,
        name: bundle.name,
        outcome: bundle.outcome,
        models: bundle.models.map(nameOf),
        items: bundle.items.length,
        choices: bundle.choices.length,
        options: bundle.options.length,
        promise: bundle.promise,
      })),
    });
  },
});

/** A package worked out on every vehicle that it is for: price built up, margin, what is wrong, and its promise. */
export const showPackage = query({
  name: "catalogue.show-package",
  permission: "catalogue:write",
  input: z.strictObject({ code: z.string().max(60), versionId }),
  async run({ tx }, { code, versionId: asked }) {
    const read = await readPackages(tx, asked);
    if (!read.ok) return read;
    const { state, catalogue, site, models, draft } = read.value;
    const bundle = state.parts.package.get(code);
    if (!bundle) return refuseCatalogue("package-not-found");
    const isFor = (model: { readonly code: string }) =>
      bundle.models.length === 0 || bundle.models.includes(model.code);
    return ok({
      code,
      draft,
      content: bundle,
      currency: site.currency,
      vehicles: models.filter(isFor).map((model) => {
        const on = assessPackage(catalogue, site, model, bundle);
        return { ...on, margin: packageMargin(on.ledger) };
      }),
      models: models.map(({ code: model, name }) => ({ code: model, name })),
      items: [...state.parts.item].map(([item, { name }]) => ({ code: item, name })),
    });
  },
});
