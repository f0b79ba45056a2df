import './loads.css';

/** A band round the tube that squeezes it from two sides. */
export function ClampPicture() {
  return (
    <svg
      class="fitting-picture"
      viewBox="0 0 320 96"
      role="img"
      aria-label="A tube squeezed from two sides over a width"
    >
      <rect class="sketch-tube" x="10" y="34" width="300" height="28" />
      <path class="sketch-line" d="M126 24h68v10h-68ZM126 62h68v10h-68Z" />
      <path class="sketch-arrow" d="M160 2V22M154 14L160 22L166 14M160 94V74M154 82L160 74L166 82" />
      <path class="sketch-measure" d="M126 84H150M170 84H194M126 79V89M194 79V89" />
      <text x="214" y="20">
        force
      </text>
      <text x="204" y="89">
        width
      </text>
    </svg>
  );
}

/** A sleeve glued over the end of a tube, cut along. */
export function BondPicture() {
  return (
    <svg
      class="fitting-picture"
      viewBox="0 0 320 96"
      role="img"
      aria-label="Cut along: the tube's wall, glue on it, and what is bonded on"
    >
      <rect class="sketch-tube" x="10" y="52" width="210" height="14" />
      <rect class="fitting-glue" x="110" y="46" width="110" height="6" />
      <path class="sketch-line" d="M110 30H300V46H110Z" />
      <path class="sketch-measure" d="M110 80H220M110 75V85M220 75V85" />
      <text x="165" y="94" text-anchor="middle">
        length
      </text>
      <text x="230" y="64">
        glue
      </text>
      <text x="205" y="22" text-anchor="middle">
        what is bonded on
      </text>
      <text x="14" y="44">
        tube’s wall
      </text>
    </svg>
  );
}
