import { HatchLines } from '#app/parts/hatch.tsx';
import '#app/planning/wall/pictures/pictures.css';
import './demold.css';

interface Props {
  /** m on the diameter */
  clearance: number;
  label: string;
  says: string;
}

const size = 150;
const middle = size / 2;
/** px of gap drawn for a tenth of a millimeter on the diameter, and the most that is drawn */
const perTenth = 18;
const widest = 14;

/** Mandrel and tube cut across, the gap between them drawn far too wide; a grip overlaps and is hatched. */
export function TubeSection({ clearance, label, says }: Props) {
  const gap = Math.max(-5, Math.min(widest, (clearance / 1e-4) * perTenth));
  const drawn = clearance > 0 ? Math.max(3, gap) : 0;
  const bore = 46;
  const wall = 16;
  return (
    <div class="picture section-picture">
      <svg width={size} height={size} role="img" aria-label={label}>
        <HatchLines id="mandrel-metal" class="mandrel-metal" />
        <circle class="picture-tone" cx={middle} cy={middle} r={bore + wall} />
        <circle class="picture-plate" cx={middle} cy={middle} r={bore} />
        <circle fill="url(#mandrel-metal)" class="mandrel-edge" cx={middle} cy={middle} r={bore - drawn} />
        <circle class="picture-ring" cx={middle} cy={middle} r={bore} />
        {clearance <= 0 && <circle class="mandrel-grip" cx={middle} cy={middle} r={bore} />}
      </svg>
      <p class="picture-words">{says}</p>
    </div>
  );
}
