/** Photos that are at the workshop, small; each opens in full. */
export function Photos({ addresses, of }: { readonly addresses: readonly string[]; readonly of: string }) {
  if (addresses.length === 0) return null;
  return (
    <ul className="card-photos" aria-label="Photos">
      {addresses.map((sha256, index) => (
        <li key={sha256}>
          <a href={`/api/files/${sha256}`} target="_blank" rel="noreferrer">
            {/* biome-ignore lint/performance/noImgElement: only whoever is signed in may read it, not an optimiser. */}
            <img
              className="card-photo"
              src={`/api/files/${sha256}`}
              alt={`${index + 1} of: ${of}`}
              loading="lazy"
            />
          </a>
        </li>
      ))}
    </ul>
  );
}
