const LINE_WIDTHS = ["72%", "94%", "61%", "88%", "47%", "79%"];

/** The page's lines before their words have come. */
export function Loading({ label = "Fetching the page" }: { readonly label?: string }) {
  return (
    <div role="status" className="section">
      <span className="visually-hidden">{label}</span>
      {LINE_WIDTHS.map((width) => (
        <div key={width} className="skeleton-line" style={{ width }} aria-hidden="true" />
      ))}
    </div>
  );
}
