"use server";

import { addCustomer, addVehicle, editCustomer, editVehicle } from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { FormState } from "@/design/forms/form-state";
import { numberOf, textOf } from "@/server/form-entries";
import { runForm } from "@/server/run-form";
import { customerOf, vehicleOf } from "./typed-entries";

export async function addCustomerAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state, value } = await runForm(addCustomer, customerOf(form), form);
  if (!value) return state;
  redirect(`/customers/${value.id}`);
}

export async function editCustomerAction(_previous: FormState, form: FormData): Promise<FormState> {
  const customerId = textOf(form, "customerId");
  const input = { customerId, revision: numberOf(form, "revision"), ...customerOf(form) };
  const { state } = await runForm(editCustomer, input, form, "Saved.");
  // Refused as stale too: the newer entries then stand beside what was typed.
  revalidatePath(`/customers/${customerId}`);
  return state;
}

export async function addVehicleAction(_previous: FormState, form: FormData): Promise<FormState> {
  const input = { customerId: textOf(form, "customerId"), ...vehicleOf(form) };
  const { state, value } = await runForm(addVehicle, input, form);
  if (!value) return state;
  redirect(`/vehicles/${value.id}`);
}

export async function editVehicleAction(_previous: FormState, form: FormData): Promise<FormState> {
  const vehicleId = textOf(form, "vehicleId");
  const input = {
    vehicleId,
    revision: numberOf(form, "revision"),
    ...vehicleOf(form),
    odometerIsRight: form.get("odometerIsRight") === "yes",
  };
  const { state } = await runForm(editVehicle, input, form, "Saved.");
  revalidatePath(`/vehicles/${vehicleId}`);
  return state;
}
