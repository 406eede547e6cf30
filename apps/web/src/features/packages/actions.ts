"use server";

import { copyPackage, savePackage } from "@buildproof/workshop";
import { redirect } from "next/navigation";
import type { FormState } from "@/design/forms/form-state";
import { numberOf, orNull, textOf } from "@/server/form-entries";
import { runForm } from "@/server/run-form";
import { packageOfForm } from "./package-of-form";
import { replacementsOf } from "./replacements-of";

export async function savePackageAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state, value } = await runForm(
    savePackage,
    {
      versionId: orNull(form, "versionId", textOf),
      revision: numberOf(form, "revision"),
      code: orNull(form, "code", textOf),
      ...packageOfForm(form),
    },
    form,
  );
  if (!value) return state;
  redirect(`/catalogue/packages/${value.code}?draft=${value.versionId}`);
}

export async function copyPackageAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state, value } = await runForm(
    copyPackage,
    {
      versionId: orNull(form, "versionId", textOf),
      revision: numberOf(form, "revision"),
      code: textOf(form, "code"),
      modelCode: textOf(form, "modelCode"),
      name: textOf(form, "name"),
      replacements: replacementsOf(form),
    },
    form,
  );
  if (!value) return state;
  redirect(`/catalogue/packages/${value.code}?draft=${value.versionId}`);
}
