import '#app/planning/wall/pictures/pictures.css';
import './proof.css';

const [width, height] = [260, 150];
const middle = { x: width / 2, y: 76 };

/** A ring between two flats: as it is, and as it gives. */
export function SqueezePicture() {
  const { x, y } = middle;
  return (
    <div class="picture">
      <svg
        width={width}
        height={height}
        role="img"
        aria-label="The end of the tube between two flats, a scale under it: it gets narrower one way and wider the other"
      >
        <circle class="proof-round" cx={x} cy={y} r={48} />
        <ellipse class="proof-tube" cx={x} cy={y} rx={54} ry={41} />
        <ellipse class="proof-bore" cx={x} cy={y} rx={54} ry={41} />
        <path class="proof-rest" d={`M${x - 70} ${y - 60}h140v13h-140Z M${x - 70} ${y + 47}h140v13h-140Z`} />
        <path
          class="proof-cord"
          d={`M${x} 0V${y - 62}M${x - 6} ${y - 70}L${x} ${y - 62}L${x + 6} ${y - 70}`}
        />
        <text x={x + 78} y={y + 58}>
          scale
        </text>
      </svg>
    </div>
  );
}
