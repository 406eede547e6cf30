const WORDS = { fit: "Fit", watch: "Watch", stop: "Stop" } as const;

/** The condition of a thing, graded in words. */
export function Condition({ grade }: { readonly grade: keyof typeof WORDS }) {
  return (
    <span className="condition" data-grade={grade}>
      {WORDS[grade]}
    </span>
  );
}
