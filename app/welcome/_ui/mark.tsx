/** The mark: the outline of a slab with three sawn lines. */
export function Mark() {
  return (
    <svg width="64" height="64" viewBox="0 0 64 64" aria-hidden="true" focusable="false">
      <path
        d="M13 11C18 7 27 9 33 9s13-2 18 2c3 3 1 9 2 14s3 9 1 15-1 12-5 14c-5 2-11 0-17 1s-12 2-17-1c-4-3-2-9-3-14s-3-9-2-15 0-11 3-14z"
        fill="var(--wood)"
        stroke="var(--bark)"
        strokeWidth="4"
        strokeLinejoin="round"
      />
      <path
        d="M23 9.5c-1 9 2 15 1 23s-2 14-1 22.500M32.500 9c1 8-1 15 0 23s0 15 0 23.500M42 9c1 9-2 14-1 23s2 14 0 22.500"
        fill="none"
        stroke="var(--on-wood)"
        strokeWidth="3"
        strokeLinecap="round"
      />
    </svg>
  );
}
