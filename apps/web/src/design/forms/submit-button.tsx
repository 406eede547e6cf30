"use client";

import { Button, type ButtonProps } from "../button";
import { useFormState } from "./form-context";

/** Sends the form it stands in; waits while the answer is on its way. */
export function SubmitButton({ variant = "primary", ...rest }: Omit<ButtonProps, "type" | "isPending">) {
  const { isPending } = useFormState();
  return <Button {...rest} type="submit" variant={variant} isPending={isPending} />;
}
