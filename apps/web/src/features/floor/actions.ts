"use server";

import { checkIn, clearFault, correctClock, signHoldPoint } from "@buildproof/workshop";
import { refresh } from "next/cache";
import { type FormState, refusedForm, savedForm } from "@/design/forms/form-state";
import { requestContext } from "@/server/request-context";
import { asFormRefusal, runForm } from "@/server/run-form";
import { typedFigure } from "./typed-figure";

export async function checkInAction(_: FormState, form: FormData): Promise<FormState> {
  const jobId = String(form.get("jobId") ?? "");
  const odometerKm = typedFigure(form.get("odometerKm"));
  const keys = typedFigure(form.get("keys"));
  const fuelOctane = typedFigure(form.get("fuelOctane"));
  const ethanolPct = typedFigure(form.get("ethanolPct"));
  const input = {
    jobId,
    odometerKm: odometerKm ?? Number.NaN,
    keys: keys ?? Number.NaN,
    ...(fuelOctane === undefined ? {} : { fuelOctane }),
    ...(ethanolPct === undefined ? {} : { ethanolPct }),
    condition: String(form.get("condition") ?? ""),
    photos: form.getAll("photo").map(String),
    told: form.getAll("told").map(String),
  };
  const { state } = await runForm(checkIn, input, form, "The vehicle is in.");
  // The page is read anew and shows the record in place of the form.
  refresh();
  return state;
}

export async function signHoldPointAction(_: FormState, form: FormData): Promise<FormState> {
  const key = String(form.get("requestKey") ?? "");
  const result = await signHoldPoint(
    await requestContext(),
    {
      stepId: String(form.get("stepId") ?? ""),
      email: String(form.get("email") ?? ""),
      password: String(form.get("password") ?? ""),
      note: String(form.get("note") ?? ""),
      signatoryName: String(form.get("signatoryName") ?? ""),
    },
    key === "" ? {} : { key },
  );
  if (!result.ok) return refusedForm(asFormRefusal(result.refusal), form);
  refresh();
  return savedForm();
}

export async function clearFaultAction(_: FormState, form: FormData): Promise<FormState> {
  const input = { faultId: String(form.get("faultId") ?? ""), because: String(form.get("because") ?? "") };
  const { state } = await runForm(clearFault, input, form, "The fault is settled.");
  refresh();
  return state;
}

export async function correctClockAction(_: FormState, form: FormData): Promise<FormState> {
  const input = {
    entryId: String(form.get("entryId") ?? ""),
    stoppedAt: String(form.get("stoppedAt") ?? ""),
    reason: String(form.get("reason") ?? ""),
  };
  const { state } = await runForm(correctClock, input, form, "The clock is corrected.");
  refresh();
  return state;
}
