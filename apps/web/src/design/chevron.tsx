/** Points down: there is more here. */
export function Chevron() {
  return (
    <svg className="chevron" viewBox="0 0 12 12" aria-hidden="true" focusable="false">
      <path d="M2 4 L6 8.5 L10 4" />
    </svg>
  );
}
