"use client";

import Link from "next/link";
import type { ComponentProps, ReactNode } from "react";
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from "react-aria-components";

export type ButtonVariant = "primary" | "quiet" | "danger" | "plain";

export interface ButtonProps extends Omit<AriaButtonProps, "className" | "style" | "children"> {
  readonly variant?: ButtonVariant;
  readonly children: ReactNode;
  /** Said instead of the label while the answer is awaited. */
  readonly pendingLabel?: string;
  readonly wide?: boolean;
}

/** One thing that can be done. `primary` at most once in view; `danger` only where something is undone for good. */
export function Button({ variant = "quiet", children, pendingLabel, wide, ...rest }: ButtonProps) {
  return (
    <AriaButton {...rest} className="button" data-variant={variant} data-wide={wide || undefined}>
      {rest.isPending ? (
        <>
          <span className="button-pending" aria-hidden="true" />
          {pendingLabel ?? children}
        </>
      ) : (
        children
      )}
    </AriaButton>
  );
}

interface ButtonLinkProps extends Omit<ComponentProps<typeof Link>, "className" | "style"> {
  readonly variant?: ButtonVariant;
  readonly wide?: boolean;
}

/** Goes somewhere, looks like a button. */
export function ButtonLink({ variant = "quiet", wide, ...rest }: ButtonLinkProps) {
  return <Link {...rest} className="button" data-variant={variant} data-wide={wide || undefined} />;
}
