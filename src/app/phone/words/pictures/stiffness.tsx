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

export function ProofTest() {
  return (
    <Drawing says="A tube on two rests with a weight hung from its middle, and a dial that reads how far it goes down">
      <path class="word-ink word-tint" d="M30 40C110 58 210 58 290 40L290 52C210 70 110 70 30 52Z" />
      <path class="word-ink" d="M44 56L34 84H54ZM276 56L266 84H286Z" />
      <path class="word-thin" d="M160 66V92" />
      <path class="word-ink word-tint" d="M146 92H174L180 116H140Z" />
      <circle class="word-ink" cx="160" cy="20" r="13" />
      <path class="word-blue" d="M160 20L167 13M160 33V53" />
      <Label x={196} y={112} at="start">
        known weight
      </Label>
      <Label x={182} y={24} at="start">
        dial
      </Label>
    </Drawing>
  );
}

export function AgainstPlan() {
  return (
    <Drawing says="The line the plan draws of a tube under a weight, dashed, and a little lower the line your own tube takes">
      <path class="word-ink" d="M30 20V78" />
      <path class="word-thin" stroke-dasharray="6 5" d="M30 44C140 44 220 52 284 72" />
      <path class="word-blue" d="M30 44C140 44 216 60 280 98" />
      <Label x={206} y={42} at="start">
        by plan
      </Label>
      <Label x={150} y={98} strong>
        yours
      </Label>
    </Drawing>
  );
}
