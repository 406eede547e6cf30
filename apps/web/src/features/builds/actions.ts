"use server";

import {
  changeItems,
  choosePackage,
  copyBuild,
  editGoal,
  type ItemsChanged,
  perform,
  type Result,
  recordInspection,
  startBuild,
} from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/design/forms/form-state";
import { isTicked, numberOf, orNull, textOf, ticksOf } from "@/server/form-entries";
import { requestContext } from "@/server/request-context";
import { runForm } from "@/server/run-form";
import { pickedOfForm } from "./picked-of-form";
import type { SheetChange } from "./sheet-change";

/** One step of the build sheet. The fresh sheet comes back with the answer. */
export async function changeSheetAction(
  buildId: string,
  revision: number,
  change: SheetChange,
): Promise<Result<ItemsChanged>> {
  const context = await requestContext();
  const result =
    change.kind === "package"
      ? await perform(context, choosePackage, {
          buildId,
          revision,
          packageCode: change.packageCode,
          picked: [...change.picked],
        })
      : await perform(context, changeItems, {
          buildId,
          revision,
          set: change.set.map((each) => ({ ...each })),
          remove: [...change.remove],
          ...(change.packageCode === undefined ? {} : { packageCode: change.packageCode }),
        });
  revalidatePath(`/builds/${buildId}`);
  return result;
}

export async function setQuantityAction(_previous: FormState, form: FormData): Promise<FormState> {
  const buildId = textOf(form, "buildId");
  const set = [{ code: textOf(form, "code"), quantity: numberOf(form, "quantity") }];
  const input = { buildId, revision: numberOf(form, "revision"), set, remove: [] };
  const { state } = await runForm(changeItems, input, form);
  revalidatePath(`/builds/${buildId}`);
  if (state.status !== "refused") return state;
  // The use case names the list it was given; the form has one field.
  const { refusal, ...rest } = state;
  const { sentence, points } = refusal;
  const said = sentence.replace(/^set\.\d+\.quantity: /, "");
  return { ...rest, refusal: { sentence: said, field: "quantity", ...(points ? { points } : {}) } };
}

export async function startBuildAction(_previous: FormState, form: FormData): Promise<FormState> {
  const packageCode = textOf(form, "packageCode");
  const { state, value } = await runForm(
    startBuild,
    {
      vehicleId: textOf(form, "vehicleId"),
      goal: textOf(form, "goal"),
      wantedBy: orNull(form, "wantedBy", textOf),
      packageCode: packageCode === "" || packageCode === "none" ? null : packageCode,
      picked: pickedOfForm(form),
      items: [...ticksOf(form, "item")],
    },
    form,
  );
  if (!value) return state;
  redirect(`/builds/${value.id}`);
}

export async function editGoalAction(_previous: FormState, form: FormData): Promise<FormState> {
  const buildId = textOf(form, "buildId");
  const input = {
    buildId,
    revision: numberOf(form, "revision"),
    goal: textOf(form, "goal"),
    wantedBy: orNull(form, "wantedBy", textOf),
  };
  const { state } = await runForm(editGoal, input, form, "Saved.");
  revalidatePath(`/builds/${buildId}`);
  return state;
}

export async function recordInspectionAction(_previous: FormState, form: FormData): Promise<FormState> {
  const buildId = textOf(form, "buildId");
  const { state } = await runForm(
    recordInspection,
    {
      buildId,
      odometerKm: numberOf(form, "odometerKm"),
      leakDownWorstPct: numberOf(form, "leakDownWorstPct"),
      leakDownSpreadPct: numberOf(form, "leakDownSpreadPct"),
      fuelTrimWorstPct: numberOf(form, "fuelTrimWorstPct"),
      misfireCodes: isTicked(form, "misfireCodes"),
      coolingSound: isTicked(form, "coolingSound"),
      note: textOf(form, "note"),
    },
    form,
    ({ outcome }) => `Inspection recorded: ${outcome}.`,
  );
  revalidatePath(`/builds/${buildId}`);
  return state;
}

export async function copyBuildAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state, value } = await runForm(copyBuild, { buildId: textOf(form, "buildId") }, form);
  if (!value) return state;
  redirect(`/builds/${value.id}`);
}
