import { Drawing, Label, Span, spiral } from './pen.tsx';

export function Station() {
  return (
    <Drawing says="A tube from the side with four stations marked along it, counted from end 0">
      <path class="word-ink word-tint" d="M20 50L300 58V88L20 96Z" />
      {[20, 110, 210, 300].map((x, i) => (
        <g key={x}>
          <path class="word-blue" d={`M${x} 40V106`} />
          <Label x={x} y={126} at={i === 0 ? 'start' : i === 3 ? 'end' : 'middle'}>
            {['0', '0.6 m', '1.3 m', '2 m'][i]}
          </Label>
        </g>
      ))}
      <Label x={20} y={28} at="start" strong>
        end 0
      </Label>
    </Drawing>
  );
}

export function EndZero() {
  return (
    <Drawing says="A flat piece of cloth: end 0 at its left, the straight datum edge along its top">
      <path class="word-ink word-tint" d="M40 34H290V74L40 116Z" />
      <path class="word-blue" d="M40 34H290" />
      <Label x={165} y={24} strong>
        datum edge
      </Label>
      <Label x={34} y={80} at="end" strong>
        0
      </Label>
      <path class="word-blue" d="M40 34V116" />
      <Label x={150} y={66}>
        measured from here →
      </Label>
    </Drawing>
  );
}

export function Mandrel() {
  return (
    <Drawing says="A bar with cloth rolled on its middle and both ends left bare">
      <path class="word-ink" d="M10 60H310V84H10Z" />
      <path class="word-ink word-tint" d="M60 48H260V96H60Z" />
      <Label x={160} y={78} strong>
        cloth
      </Label>
      <Label x={34} y={116}>
        bare
      </Label>
      <Label x={286} y={116}>
        bare
      </Label>
    </Drawing>
  );
}

export function WrapsAndPlies() {
  return (
    <Drawing says="A tube cut across: cloth wrapped two and a half times, so three plies lie on one side and two on the other">
      <circle class="word-ink" cx="110" cy="70" r="26" />
      <path class="word-blue" d={spiral(2.5, { x: 110, y: 70, from: 32, step: 12 })} />
      <path class="word-thin" d="M172 46L200 40M60 60L20 30" />
      <Label x={204} y={44} at="start">
        3 plies here
      </Label>
      <Label x={6} y={24} at="start">
        2 here
      </Label>
      <Label x={204} y={96} at="start" strong>
        2.5 wraps
      </Label>
    </Drawing>
  );
}

export function Wall() {
  return (
    <Drawing says="A tube cut across, with the thickness of its wall marked">
      <circle class="word-ink word-tint" cx="110" cy="70" r="58" />
      <circle class="word-ink word-paper" cx="110" cy="70" r="40" />
      <path class="word-blue" d="M150 70H168" />
      <path class="word-thin" d="M172 70H198" />
      <Label x={204} y={75} at="start" strong>
        wall
      </Label>
      <Label x={110} y={75}>
        bore
      </Label>
    </Drawing>
  );
}

export function Seam() {
  return (
    <Drawing says="A tube with a line along it, where the outer edge of the cloth lies">
      <path class="word-ink word-tint" d="M30 46H290V100H30Z" />
      <ellipse class="word-ink word-paper" cx="30" cy="73" rx="11" ry="27" />
      <path class="word-blue" d="M37 60H290" />
      <Label x={165} y={30} strong>
        seam
      </Label>
      <path class="word-thin" d="M165 34V56" />
    </Drawing>
  );
}

export function Step() {
  return (
    <Drawing says="The wall close up: two plies all along, and a third that ends, which makes a step">
      <path class="word-ink word-tint" d="M20 96H300V116H20ZM20 76H300V96H20Z" />
      <path class="word-ink word-tint" d="M20 56H170V76H20Z" />
      <path class="word-blue" d="M170 50V80" />
      <Label x={178} y={46} at="start" strong>
        the step
      </Label>
      <Label x={90} y={46}>
        3 plies
      </Label>
      <Label x={262} y={68}>
        2 plies
      </Label>
    </Drawing>
  );
}

export function DevelopedWidth() {
  return (
    <Drawing says="Cloth round a mandrel and the same cloth laid flat: the flat strip is as wide as the way round">
      <circle class="word-ink" cx="60" cy="66" r="26" />
      <path class="word-blue" d={spiral(1.5, { x: 60, y: 66, from: 30, step: 9 })} />
      <path class="word-thin" d="M112 66H134M128 60L134 66L128 72" />
      <path class="word-blue word-tint" d="M146 56H306V80H146Z" />
      <Span x1={146} x2={306} y={98} />
      <Label x={226} y={120} strong>
        width, flat
      </Label>
    </Drawing>
  );
}

export function Lap() {
  return (
    <Drawing says="Two ends of one wrap lying over each other">
      <path class="word-ink" d="M20 96H300V110H20Z" />
      <path class="word-ink word-tint" d="M20 80H200V96H20Z" />
      <path class="word-ink word-tint" d="M140 64H300V80H140Z" />
      <Span x1={140} x2={200} y={48} />
      <Label x={170} y={36} strong>
        lap
      </Label>
      <Label x={160} y={130}>
        mandrel
      </Label>
    </Drawing>
  );
}

export function Warp() {
  const lines = [0, 1, 2, 3, 4, 5, 6];
  return (
    <Drawing says="Two squares of cloth: threads along the tube, and threads at 45 degrees, the bias">
      <path class="word-ink" d="M30 20H120V110H30ZM200 20H290V110H200Z" />
      {lines.slice(1).map((i) => (
        <path key={i} class="word-blue" d={`M30 ${20 + i * 13}H120`} />
      ))}
      {lines.slice(1).map((i) => (
        <path
          key={i}
          class="word-blue"
          d={
            i <= 3
              ? `M200 ${20 + i * 30}L${200 + i * 30} 20`
              : `M${200 + (i - 3) * 30} 110L290 ${20 + (i - 3) * 30}`
          }
        />
      ))}
      <Label x={75} y={132}>
        warp straight
      </Label>
      <Label x={245} y={132}>
        bias
      </Label>
      <path class="word-thin" d="M140 64H180M174 58L180 64L174 70M146 58L140 64L146 70" />
      <Label x={160} y={52}>
        tube
      </Label>
    </Drawing>
  );
}

export function ArealWeight() {
  return (
    <Drawing says="A square of cloth, one meter by one meter, on a scale that reads 200 grams">
      <path class="word-ink word-tint" d="M110 14H210V84H110Z" />
      <Label x={160} y={54} strong>
        1 m × 1 m
      </Label>
      <path class="word-ink" d="M80 88H240M96 88L88 126H232L224 88" />
      <Label x={160} y={113} strong>
        200 g
      </Label>
    </Drawing>
  );
}
