/** The hatches that say 'care' and 'stop' without color. Ids are `${id}-amber` and `${id}-stop`. */
export function Hatch({ id }: { id: string }) {
  return (
    <defs>
      <pattern
        id={`${id}-amber`}
        width="8"
        height="8"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <line class="hatch-amber" x1="0" y1="0" x2="0" y2="8" />
      </pattern>
      <pattern id={`${id}-stop`} width="6" height="6" patternUnits="userSpaceOnUse">
        <path class="hatch-stop" d="M0 0L6 6M6 0L0 6" />
      </pattern>
    </defs>
  );
}

interface LinesProps {
  id: string;
  /** Of its lines: what gives them their color and width. */
  class: string;
  /** px from line to line */
  apart?: number;
  /** degrees */
  turn?: number;
}

/** One pattern of slanted lines, filled with by `url(#id)`. */
export function HatchLines({ id, class: of, apart = 7, turn = 45 }: LinesProps) {
  return (
    <defs>
      <pattern
        id={id}
        width={apart}
        height={apart}
        patternUnits="userSpaceOnUse"
        patternTransform={`rotate(${turn})`}
      >
        <line class={of} x1="0" y1="0" x2="0" y2={apart} />
      </pattern>
    </defs>
  );
}
