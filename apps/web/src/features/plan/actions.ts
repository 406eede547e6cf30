"use server";

import { bookJob, cancelBooking, moveBooking } from "@buildproof/workshop";
import { revalidatePath } from "next/cache";
import type { FormState } from "@/design/forms/form-state";
import { runForm } from "@/server/run-form";
import { typedBlock, typedBlocks, typedOverrides } from "./typed-booking";

export async function bookAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    bookJob,
    { jobId: String(form.get("jobId") ?? ""), blocks: typedBlocks(form), overrides: typedOverrides(form) },
    form,
    ({ bookingIds, warnings }) => [`Booked ${bookingIds.length} blocks.`, ...warnings].join(" "),
  );
  showAnew(state);
  return state;
}

export async function moveBookingAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    moveBooking,
    { bookingId: String(form.get("bookingId") ?? ""), ...typedBlock(form, "0") },
    form,
    ({ warnings }) => ["Booking moved.", ...warnings].join(" "),
  );
  showAnew(state);
  return state;
}

export async function cancelBookingAction(_previous: FormState, form: FormData): Promise<FormState> {
  const { state } = await runForm(
    cancelBooking,
    { bookingId: String(form.get("bookingId") ?? "") },
    form,
    "Booking cancelled.",
  );
  showAnew(state);
  return state;
}

function showAnew(state: FormState): void {
  if (state.status !== "saved") return;
  revalidatePath("/plan");
  revalidatePath("/jobs/[id]", "page");
}
