import type { ReactNode } from "react";

/** There is nothing here, why, and what would put something here. */
export function EmptyState({ sentence, action }: { readonly sentence: string; readonly action?: ReactNode }) {
  return (
    <div className="state" data-kind="empty">
      <p>{sentence}</p>
      {action}
    </div>
  );
}
