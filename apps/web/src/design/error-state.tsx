import type { ReactNode } from "react";

interface ErrorStateProps {
  readonly sentence: string;
  /** What to do next, in words. */
  readonly next: ReactNode;
  readonly action?: ReactNode;
  /** Quoted to whoever looks into it. */
  readonly reference?: string;
}

/** Something failed: what, what to do next, and what to quote. */
export function ErrorState({ sentence, next, action, reference }: ErrorStateProps) {
  return (
    <div className="state" data-kind="error" role="alert">
      <p className="notice-title">{sentence}</p>
      <p>{next}</p>
      {reference && <p className="fine">Reference {reference}</p>}
      {action}
    </div>
  );
}
