import { Drawing, Label, Span } from './pen.tsx';

export function ResinToFabric() {
  return (
    <Drawing says="A bar in two parts: 55 parts of resin and 45 parts of fabric by weight">
      <path class="word-blue word-tint" d="M20 46H174V92H20Z" />
      <path class="word-ink" d="M174 46H300V92H174Z" />
      <Label x={97} y={76} strong>
        55 resin
      </Label>
      <Label x={237} y={76} strong>
        45 fabric
      </Label>
      <Label x={160} y={120}>
        by weight, out of 100
      </Label>
    </Drawing>
  );
}

const fibers = [0, 1, 2, 3].flatMap((row) => [0, 1, 2, 3, 4].map((column) => ({ row, column })));

export function FiberVolume() {
  return (
    <Drawing says="The wall cut across, magnified: round fibers in resin, taking up a third of the room">
      <path class="word-ink word-tint" d="M20 16H180V124H20Z" />
      {fibers.map(({ row, column }) => (
        <circle
          key={`${row}-${column}`}
          class="word-solid"
          cx={34 + column * 30 + (row % 2) * 12}
          cy={30 + row * 26}
          r="10"
        />
      ))}
      <Label x={196} y={52} at="start">
        dark: fiber
      </Label>
      <Label x={196} y={76} at="start">
        pale: resin
      </Label>
      <Label x={196} y={108} at="start" strong>
        35 % fiber
      </Label>
    </Drawing>
  );
}

export function Cup() {
  return (
    <Drawing says="A cup with resin below and hardener on top, on a scale">
      <path class="word-blue word-tint" d="M64 56H136L128 108H72Z" />
      <path class="word-ink" d="M54 16L68 108H132L146 16" />
      <path class="word-thin" d="M62 56H138" />
      <path class="word-ink" d="M40 112H160M52 112L48 130H152L148 112" />
      <Label x={164} y={46} at="start">
        hardener, on top
      </Label>
      <Label x={164} y={88} at="start">
        resin, first
      </Label>
    </Drawing>
  );
}

export function PotLife() {
  return (
    <Drawing says="Time runs faster in a deep cup than in a thin film: the cup is over at half the time of the film">
      <path class="word-blue word-tint" d="M20 20H62L56 58H26Z" />
      <path class="word-ink" d="M16 12L25 58H57L66 12" />
      <path class="word-blue word-tint" d="M84 28H178V50H84Z" />
      <path class="word-ink" d="M84 28H230V50H84Z" />
      <Label x={300} y={44} at="end" strong>
        cup
      </Label>
      <path class="word-ink" d="M14 112H70" />
      <path class="word-blue" d="M16 107H68" />
      <path class="word-blue word-tint" d="M84 94H250V116H84Z" />
      <path class="word-ink" d="M84 94H270V116H84Z" />
      <Label x={310} y={110} at="end" strong>
        film
      </Label>
    </Drawing>
  );
}

export function OpenTime() {
  return (
    <Drawing says="From the hardener going in to gel: the tape has to be all on before the end">
      <path class="word-ink" d="M20 74H300" />
      {[20, 60, 100, 140, 180, 220, 260, 300].map((x) => (
        <path key={x} class="word-thin" d={`M${x} 68V80`} />
      ))}
      <path class="word-blue" d="M20 74H240" />
      <path class="word-ink" d="M240 44V88" />
      <Label x={236} y={38} at="end" strong>
        tape all on
      </Label>
      <Label x={20} y={106} at="start">
        hardener in
      </Label>
      <Label x={300} y={106} at="end">
        gel
      </Label>
    </Drawing>
  );
}

export function Exotherm() {
  return (
    <Drawing says="A deep cup gives off heat and smokes; the same resin poured out flat stays cool">
      <path class="word-stop" d="M50 62H110L102 112H58Z" />
      <path class="word-ink" d="M42 30L56 112H104L118 30" />
      <path class="word-ink" d="M66 22q-6 -6 0 -12M80 22q-6 -6 0 -12M94 22q-6 -6 0 -12" />
      <Label x={80} y={132}>
        deep: hot
      </Label>
      <path class="word-ink" d="M180 104H300V112H180Z" />
      <path class="word-blue" d="M184 102H296" />
      <Label x={240} y={132}>
        flat: cool
      </Label>
    </Drawing>
  );
}

export function WetOut() {
  return (
    <Drawing says="Cloth and resin between two films, with a squeegee pushed from the middle out">
      <path class="word-ink" d="M20 108H300" />
      <path class="word-blue word-tint" d="M36 88H284V100H36Z" />
      <path class="word-ink" d="M24 82H296" />
      <path class="word-solid" d="M150 78L162 30H178L166 78Z" />
      <path class="word-thin" d="M180 60H240M234 54L240 60L234 66" />
      <Label x={40} y={72} at="start">
        top film
      </Label>
      <Label x={36} y={130} at="start">
        bottom film
      </Label>
      <Label x={284} y={130} at="end" strong>
        wet cloth
      </Label>
    </Drawing>
  );
}

export function FilmCount() {
  return (
    <Drawing says="Two films laid in, two films taken out again before the tape">
      <path class="word-ink" d="M20 50H130M20 72H130" />
      <Label x={75} y={30} strong>
        2 in
      </Label>
      <path class="word-thin" d="M146 61H174M168 55L174 61L168 67" />
      <path class="word-ink" d="M190 50H300M190 72H300" />
      <Label x={245} y={30} strong>
        2 out
      </Label>
      <Label x={160} y={112}>
        before the first turn of tape
      </Label>
    </Drawing>
  );
}

export function LostInCup() {
  return (
    <Drawing says="An empty cup and a stick with resin left on both">
      <path class="word-ink" d="M64 24L78 112H142L156 24" />
      <path class="word-blue" d="M74 92Q82 108 90 106H130Q138 108 146 92" />
      <path class="word-ink" d="M120 20L176 108" />
      <path class="word-blue" d="M158 80L176 108" />
      <Label x={196} y={62} at="start" strong>
        stays behind
      </Label>
      <Label x={196} y={86} at="start">
        in every cup
      </Label>
    </Drawing>
  );
}

export function SqueezedOut() {
  return (
    <Drawing says="Tape pressing on the wet wall, and drops of resin coming out at its edges">
      <path class="word-ink word-tint" d="M20 66H300V98H20Z" />
      {[24, 94, 164, 234].map((x) => (
        <path key={x} class="word-ink" d={`M${x} 54H${x + 62}V66H${x}Z`} />
      ))}
      {[90, 160, 230].map((x) => (
        <circle key={x} class="word-solid" cx={x} cy="46" r="7" />
      ))}
      <path class="word-thin" d="M55 18V46M50 40L55 46L60 40M265 18V46M260 40L265 46L270 40" />
      <Label x={160} y={26} strong>
        squeezed out
      </Label>
      <Label x={160} y={124}>
        wall
      </Label>
    </Drawing>
  );
}

export function LeanAndRich() {
  return (
    <Drawing says="A scale of hardener: lean is too little, rich is too much, right lies between">
      <path class="word-ink" d="M20 60H300V84H20Z" />
      <path class="word-blue word-tint" d="M130 60H190V84H130Z" />
      <Label x={160} y={50} strong>
        right
      </Label>
      <Label x={75} y={77}>
        lean
      </Label>
      <Label x={245} y={77}>
        rich
      </Label>
      <Label x={20} y={110} at="start">
        less hardener
      </Label>
      <Label x={300} y={110} at="end">
        more
      </Label>
    </Drawing>
  );
}

export function DewPoint() {
  return (
    <Drawing says="Drops of water on a cold mandrel">
      <path class="word-ink" d="M20 70H300V100H20Z" />
      {[60, 104, 160, 206, 258].map((x, i) => (
        <path key={x} class="word-blue word-tint" d={`M${x} ${44 + (i % 2) * 6}q-9 14 0 18q9 -4 0 -18Z`} />
      ))}
      <Label x={160} y={126}>
        colder than the dew point: wet
      </Label>
    </Drawing>
  );
}

export function WorkingRate() {
  return (
    <Drawing says="Resin worked into cloth, so many grams in a minute">
      <path class="word-blue word-tint" d="M20 60H150V96H20Z" />
      <path class="word-ink" d="M20 60H300V96H20Z" />
      <Span x1={110} x2={150} y={46} />
      <Label x={130} y={34} strong>
        1 minute
      </Label>
      <Label x={85} y={118}>
        wet
      </Label>
      <Label x={225} y={118}>
        dry
      </Label>
    </Drawing>
  );
}
