import { Drawing, Label } from './pen.tsx';

/** A pole held at its foot. */
function Held() {
  return (
    <>
      <path class="word-ink" d="M30 30V110M30 34L18 46M30 54L18 66M30 74L18 86M30 94L18 106" />
      <path class="word-ink word-tint" d="M30 62H270V78H30Z" />
    </>
  );
}

const down = (x: number, y1: number, y2: number) =>
  `M${x} ${y1}V${y2}M${x - 6} ${y2 - 9}L${x} ${y2}L${x + 6} ${y2 - 9}`;

export function LoadFactor() {
  return (
    <Drawing says="A pole held at its foot with a load at its tip, and beside it the same load twice as long">
      <Held />
      <path class="word-ink" d={down(216, 34, 60)} />
      <path class="word-blue" d={down(262, 8, 60)} />
      <Label x={206} y={44} at="end">
        as written
      </Label>
      <Label x={250} y={18} at="end" strong>
        times 2
      </Label>
    </Drawing>
  );
}

export function SafetyFactor() {
  return (
    <Drawing says="A rule from 0: the load reaches to a third, what the tube bears to the end">
      <path class="word-ink" d="M20 50H300V86H20Z" />
      <path class="word-blue word-tint" d="M20 50H160V86H20Z" />
      <path class="word-ink" d="M160 40V96M300 40V96" />
      <Label x={160} y={32} strong>
        the load
      </Label>
      <Label x={300} y={32} at="end">
        gives out
      </Label>
      <Label x={160} y={118}>
        1
      </Label>
      <Label x={300} y={118} at="end">
        safety factor 2
      </Label>
    </Drawing>
  );
}

export function Margin() {
  return (
    <Drawing says="Margin along a tube: a line that dips below 0 at one end, where it does not hold">
      <path class="word-ink" d="M30 84H304" />
      <path class="word-blue" d="M30 106C80 96 110 70 160 56S260 26 304 18" />
      <Label x={22} y={89} at="end">
        0
      </Label>
      <Label x={200} y={76} strong>
        holds
      </Label>
      <Label x={100} y={126}>
        does not hold
      </Label>
    </Drawing>
  );
}

export function Shear() {
  return (
    <Drawing says="Two parts of a tube, one pushed up past the other that is pushed down">
      <path class="word-ink word-tint" d="M20 50H156V82H20Z" />
      <path class="word-ink word-tint" d="M164 64H300V96H164Z" />
      <path class="word-blue" d={`M140 126V88M134 97L140 88L146 97${down(180, 20, 58)}`} />
      <Label x={196} y={36} at="start" strong>
        shear
      </Label>
    </Drawing>
  );
}

export function Moment() {
  return (
    <Drawing says="A bent tube, pulled long on one side and pressed short on the other">
      <path class="word-ink word-tint" d="M30 76C100 40 220 40 290 76L282 102C220 70 100 70 38 102Z" />
      <path
        class="word-blue"
        d="M22 112C4 92 8 64 26 52M18 54L27 51L30 60M298 112C316 92 312 64 294 52M302 54L293 51L290 60"
      />
      <Label x={160} y={36}>
        pulled long
      </Label>
      <Label x={160} y={104}>
        pressed short
      </Label>
    </Drawing>
  );
}

export function Torque() {
  return (
    <Drawing says="A tube turned one way at one end and the other way at the other">
      <path class="word-ink word-tint" d="M50 48H270V92H50Z" />
      <path class="word-thin" d="M90 92L130 48M140 92L180 48M190 92L230 48" />
      <path
        class="word-blue"
        d="M40 100C20 96 20 44 40 40M32 36L41 40L35 48M280 40C300 44 300 96 280 100M288 104L279 100L285 92"
      />
      <Label x={160} y={124} strong>
        torque
      </Label>
    </Drawing>
  );
}

export function WallBuckling() {
  return (
    <Drawing says="The pressed side of a bent tube, folded into a wrinkle at one place">
      <path class="word-ink" d="M20 92H300" />
      <path class="word-ink" d="M20 48H120C132 48 136 62 146 62S158 36 168 36S182 48 196 48H300" />
      <path class="word-thin" d="M20 24H70M62 18L70 24L62 30M300 24H250M258 18L250 24L258 30" />
      <Label x={160} y={26}>
        pressed
      </Label>
      <Label x={160} y={82} strong>
        wrinkle
      </Label>
    </Drawing>
  );
}

export function Ovalization() {
  return (
    <Drawing says="A round tube cut across, and the same tube bent hard: flat like an egg on its side">
      <circle class="word-ink word-tint" cx="84" cy="64" r="40" />
      <circle class="word-ink word-paper" cx="84" cy="64" r="32" />
      <ellipse class="word-ink word-tint" cx="230" cy="64" rx="54" ry="27" />
      <ellipse class="word-ink word-paper" cx="230" cy="64" rx="46" ry="19" />
      <path class="word-blue" d={`${down(230, 8, 32)}M230 120V96M224 105L230 96L236 105`} />
      <Label x={84} y={130}>
        straight
      </Label>
      <Label x={282} y={130} at="start" strong>
        bent
      </Label>
    </Drawing>
  );
}
