import { Drawing, Label, Span, spiral } from './pen.tsx';

export function TapeOverlap() {
  return (
    <Drawing says="Shrink tape wound on a tube, each turn lying half on the one before">
      <path class="word-ink" d="M10 44H310V100H10Z" />
      {[20, 50, 80, 110, 140, 170, 200, 230].map((x) => (
        <path key={x} class="word-ink word-tint" d={`M${x} 44H${x + 60}L${x + 44} 100H${x - 16}Z`} />
      ))}
      <path class="word-blue" d="M230 44H290L274 100H214Z" />
      <Span x1={230} x2={260} y={32} />
      <Label x={245} y={22} strong>
        overlap
      </Label>
      <Label x={160} y={126}>
        every place is covered twice
      </Label>
    </Drawing>
  );
}

export function ReleaseFilm() {
  return (
    <Drawing says="A film between the mandrel and the wall, pulled out of the tube after cure">
      <path class="word-ink" d="M20 90H200V110H20Z" />
      <path class="word-ink word-tint" d="M60 50H240V78H60Z" />
      <path class="word-blue" d="M60 84H296" />
      <path class="word-thin" d="M262 72H300M294 66L300 72L294 78" />
      <Label x={150} y={69}>
        tube
      </Label>
      <Label x={110} y={106}>
        mandrel
      </Label>
      <Label x={300} y={104} at="end" strong>
        film
      </Label>
    </Drawing>
  );
}

function Axes({ up, along }: { up: string; along: string }) {
  return (
    <>
      <path class="word-ink" d="M40 14V112H304" />
      <Label x={46} y={24} at="start">
        {up}
      </Label>
      <Label x={304} y={132} at="end">
        {along}
      </Label>
    </>
  );
}

export function Gel() {
  return (
    <Drawing says="Resin stays thin for a while, then thickens fast: where it no longer flows is gel">
      <Axes up="thick" along="time" />
      <path class="word-blue" d="M40 104C150 102 190 96 214 66S240 24 250 18" />
      <path class="word-ink" d="M214 40V112" />
      <Label x={206} y={54} at="end" strong>
        gel
      </Label>
      <Label x={110} y={92}>
        flows
      </Label>
    </Drawing>
  );
}

export function RampAndHold() {
  return (
    <Drawing says="Oven heat over time: up along a ramp, level for the hold, then down">
      <Axes up="heat" along="time" />
      <path class="word-blue" d="M40 100L120 44H224L290 96" />
      <Label x={100} y={84} at="start" strong>
        ramp
      </Label>
      <Label x={172} y={36} strong>
        hold
      </Label>
      <Label x={268} y={66} at="start">
        cool
      </Label>
    </Drawing>
  );
}

export function Tg() {
  return (
    <Drawing says="Cured resin is stiff when cool and goes soft above one temperature, its Tg">
      <Axes up="stiff" along="heat" />
      <path class="word-blue" d="M40 40H170C206 42 206 96 240 98H296" />
      <path class="word-ink" d="M200 30V112" />
      <Label x={206} y={44} at="start" strong>
        Tg
      </Label>
      <Label x={110} y={34}>
        hard
      </Label>
      <Label x={268} y={90}>
        soft
      </Label>
    </Drawing>
  );
}

export function Postcure() {
  return (
    <Drawing says="After the cure a second, slower and hotter round in the oven, off the mandrel">
      <Axes up="heat" along="time" />
      <path class="word-thin" d="M40 104L70 70H120L140 104" />
      <path class="word-blue" d="M160 104L230 34H270L296 80" />
      <Label x={94} y={60}>
        cure
      </Label>
      <Label x={220} y={30} at="end" strong>
        postcure
      </Label>
    </Drawing>
  );
}

export function CureTimeUsed() {
  return (
    <Drawing says="A rule filled to 80 percent: the share of the cure time on the data sheet">
      <path class="word-blue word-tint" d="M20 50H244V86H20Z" />
      <path class="word-ink" d="M20 50H300V86H20Z" />
      {[0, 1, 2, 3, 4].map((i) => (
        <path key={i} class="word-thin" d={`M${20 + i * 70} 86V96`} />
      ))}
      <Label x={244} y={40} strong>
        80 %
      </Label>
      <Label x={20} y={118} at="start">
        0
      </Label>
      <Label x={300} y={118} at="end">
        all of it
      </Label>
    </Drawing>
  );
}

export function OvenLoad() {
  return (
    <Drawing says="An oven with two tubes in it, a sensor on each and one in the air">
      <path class="word-ink" d="M20 14H300V122H20Z" />
      <path class="word-ink word-tint" d="M50 48H270V62H50ZM50 90H240V104H50Z" />
      <circle class="word-solid" cx="160" cy="44" r="6" />
      <circle class="word-solid" cx="150" cy="86" r="6" />
      <circle class="word-blue word-tint" cx="272" cy="30" r="6" />
      <Label x={262} y={36} at="end">
        air
      </Label>
      <Label x={172} y={42} at="start">
        part
      </Label>
      <Label x={162} y={84} at="start">
        part
      </Label>
    </Drawing>
  );
}

export function DemoldRoom() {
  return (
    <Drawing says="Mandrel and tube cut across: cooled, the mandrel shrinks away and leaves a gap">
      <circle class="word-ink word-tint" cx="80" cy="64" r="46" />
      <circle class="word-ink word-paper" cx="80" cy="64" r="34" />
      <circle class="word-ink" cx="80" cy="64" r="34" />
      <circle class="word-ink word-tint" cx="240" cy="64" r="45" />
      <circle class="word-ink word-paper" cx="240" cy="64" r="34" />
      <circle class="word-blue" cx="240" cy="64" r="27" />
      <Label x={80} y={132}>
        hot: gripped
      </Label>
      <Label x={240} y={132}>
        cold: room
      </Label>
    </Drawing>
  );
}

export function Sample() {
  return (
    <Drawing says="A little resin of every cup, numbered, lying beside the tube in the oven">
      <path class="word-ink word-tint" d="M20 30H300V52H20Z" />
      {[1, 2, 3].map((n) => (
        <g key={n}>
          <path class="word-blue word-tint" d={`M${n * 80 - 30} 84H${n * 80 + 30}V100H${n * 80 - 30}Z`} />
          <Label x={n * 80} y={122} strong>
            {`cup ${n}`}
          </Label>
        </g>
      ))}
    </Drawing>
  );
}

export function Squeeze() {
  return (
    <Drawing says="Tape round a tube pulling together on the wall from all sides">
      <circle class="word-ink word-tint" cx="160" cy="70" r="44" />
      <circle class="word-ink word-paper" cx="160" cy="70" r="30" />
      <path class="word-blue" d={spiral(1.2, { x: 160, y: 70, from: 50, step: 6 })} />
      <path class="word-thin" d="M70 70H98M92 64L98 70L92 76M250 70H222M228 64L222 70L228 76" />
      <Label x={60} y={75} at="end">
        pull
      </Label>
      <Label x={260} y={75} at="start">
        pull
      </Label>
    </Drawing>
  );
}
