import { Drawing, Label } from './pen.tsx';

export function OnePly() {
  const fibers = [44, 56, 68, 80, 92].map((y) => `M70 ${y}H230`).join('');
  return (
    <Drawing says="A sheet of fibers that all run one way: 1 points along them, 2 across">
      <path class="word-ink word-tint" d="M70 34H230V102H70Z" />
      <path class="word-thin" d={fibers} />
      <path class="word-blue" d="M236 68H284M276 61L284 68L276 75" />
      <path class="word-blue" d="M150 106V128M143 121L150 128L157 121" />
      <Label x={296} y={73} at="start" strong>
        1
      </Label>
      <Label x={166} y={130} at="start" strong>
        2
      </Label>
      <Label x={150} y={22}>
        all fibers one way
      </Label>
    </Drawing>
  );
}

export function Bending() {
  return (
    <Drawing says="A tube held at one end and bent down by a weight at the other">
      <path class="word-ink" d="M30 20V84" />
      <path class="word-ink word-tint" d="M30 40C130 40 220 52 290 84L284 98C214 68 130 58 30 58Z" />
      <path class="word-blue" d="M287 14V76M280 68L287 76L294 68" />
      <Label x={150} y={116} strong>
        stiff: it goes down less
      </Label>
    </Drawing>
  );
}

export function Squeezed() {
  return (
    <Drawing says="A tube cut across, round, and the same one squeezed flat between two fingers">
      <circle class="word-ink" cx="84" cy="70" r="38" />
      <ellipse class="word-ink" cx="226" cy="70" rx="50" ry="25" />
      <path class="word-blue" d="M226 12V38M219 31L226 38L233 31M226 128V102M219 109L226 102L233 109" />
      <path class="word-thin" d="M136 70H160M154 64L160 70L154 76" />
    </Drawing>
  );
}
