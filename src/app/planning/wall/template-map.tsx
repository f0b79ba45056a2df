import { useWidth } from '#app/parts/use-width.ts';
import type { Point, Tiling } from '#calc';
import { linear } from './pictures/scale.ts';
import { outlinePath } from './pictures/thin-line.ts';
import { sheetName } from './template-tiles.ts';

/** px that a sheet must have to carry its name */
const roomForName = 30;

/** How the sheets are laid together. */
export function TemplateMap({ outline, tiling }: { outline: readonly Point[]; tiling: Tiling }) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const { tiles } = tiling;
  const left = Math.min(...tiles.map((t) => t.x));
  const right = Math.max(...tiles.map((t) => t.x + t.width));
  const top = Math.min(...tiles.map((t) => t.y));
  const bottom = Math.max(...tiles.map((t) => t.y + t.height));
  const scale = Math.min((width.value - 2) / (right - left), 420 / (bottom - top));
  const x = linear(left, right, 1, 1 + (right - left) * scale);
  const y = linear(top, bottom, 1, 1 + (bottom - top) * scale);
  return (
    <div ref={ref}>
      <svg
        class="template-map"
        width="100%"
        height={(bottom - top) * scale + 2}
        role="img"
        aria-label={`${tiles.length} sheets laid together`}
      >
        <path class="template-map-piece" d={outlinePath(outline, x, y)} />
        {tiles.map((tile) => (
          <g key={sheetName(tile)}>
            <rect
              class="template-map-sheet"
              x={x(tile.x)}
              y={y(tile.y)}
              width={tile.width * scale}
              height={tile.height * scale}
            />
            {tile.width * scale >= roomForName && (
              <text x={x(tile.x + tile.width / 2)} y={y(tile.y + tile.height / 2)}>
                {sheetName(tile)}
              </text>
            )}
          </g>
        ))}
      </svg>
    </div>
  );
}
