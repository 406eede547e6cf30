import type { ReactNode } from "react";
import { Disclosure } from "@/design/disclosure";

interface MoreProps {
  readonly title: string;
  /** On paper nothing opens: it stands open. */
  readonly isPrinted: boolean;
  readonly children: ReactNode;
}

/** What is told on a click, and on paper always. */
export function More({ title, isPrinted, children }: MoreProps) {
  if (!isPrinted) return <Disclosure title={title}>{children}</Disclosure>;
  return (
    <div>
      <h3>{title}</h3>
      {children}
    </div>
  );
}
