import type { ReactNode } from "react";

interface NoticeProps {
  readonly title: string;
  readonly children?: ReactNode;
  /** `caution`: what to be careful about. `blocks`: what stops the work, or could hurt someone. */
  readonly kind?: "caution" | "blocks" | "saved";
}

/** A caution or a stop, set apart from the running text. */
export function Notice({ title, children, kind = "caution" }: NoticeProps) {
  return (
    <aside className="notice" data-kind={kind} aria-label={title}>
      <p className="notice-title">{title}</p>
      {children}
    </aside>
  );
}
