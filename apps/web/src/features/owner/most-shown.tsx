/** As many rows as somebody reads of a list; its sums are of all, and the export holds each. */
export const mostShown = 100;

/** Says what a list leaves out; nothing when it shows all. */
export function LeftOut({ of, which }: { readonly of: number; readonly which: string }) {
  if (of <= mostShown) return null;
  return <p className="fine">{`These are the ${mostShown} ${which}, of ${of}. The sums are of all.`}</p>;
}
