import encodeQR from 'qr';

/** One code, drawn as large as the screen is wide: black on white in any theme, or no camera reads it. */
export function CodePicture({ code, label }: { code: string; label: string }) {
  const rows = encodeQR(code, 'raw', { ecc: 'low', border: 4 });
  const size = rows.length;
  const path = rows
    .flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])))
    .join('');
  return (
    <svg class="code-picture" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" shape-rendering="crispEdges" />
    </svg>
  );
}
