/** Three links of a chain on one line, the middle one filled to its limit: asked against given. */
export function Mark() {
  return (
    <svg className="mark" viewBox="0 0 44 20" aria-hidden="true" focusable="false">
      <path d="M0 10 H44" className="mark-line" />
      <rect x="3" y="5" width="10" height="10" className="mark-link" />
      <rect x="17" y="5" width="10" height="10" className="mark-full" />
      <rect x="31" y="5" width="10" height="10" className="mark-link" />
    </svg>
  );
}
