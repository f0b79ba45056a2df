import { Drawing, Label, Span } from './pen.tsx';

export function Offcut() {
  return (
    <Drawing says="A cut piece of cloth and what is left of it at the end of the roll">
      <path class="word-ink word-tint" d="M20 30H200L180 106H20Z" />
      <path class="word-blue" d="M200 30H300V106H180Z" />
      <Label x={106} y={74}>
        piece
      </Label>
      <Label x={246} y={74} strong>
        offcut
      </Label>
    </Drawing>
  );
}

export function HeadToTail() {
  return (
    <Drawing says="Two tapering pieces lying the opposite way round on the roll, so that little is wasted">
      <path class="word-ink" d="M20 20H300V120H20Z" />
      <path class="word-ink word-tint" d="M30 30H290L290 50L30 88Z" />
      <path class="word-blue word-tint" d="M290 112H30V98L290 58Z" />
      <Label x={80} y={58}>
        head
      </Label>
      <Label x={250} y={102} strong>
        head
      </Label>
    </Drawing>
  );
}

export function Masking() {
  return (
    <Drawing says="A piece of cloth with tape along all its edges, and the cut down the middle of the tape">
      <path class="word-ink" d="M40 20H280V120H40Z" />
      <path class="word-thin" d="M64 44H256V96H64Z" />
      <path class="word-blue" d="M52 32H268V108H52Z" stroke-dasharray="8 6" />
      <Label x={160} y={76} strong>
        cloth
      </Label>
    </Drawing>
  );
}

export function Selvage() {
  return (
    <Drawing says="Cloth coming off a roll, with the woven edges on both sides">
      <path class="word-ink" d="M20 20H60V120H20Z" />
      <path class="word-ink word-tint" d="M60 26H300V114H60Z" />
      <path class="word-blue" d="M60 26H300M60 114H300" />
      <Label x={180} y={76} strong>
        selvage to selvage
      </Label>
      <path class="word-thin" d="M280 32V108M274 38L280 32L286 38M274 102L280 108L286 102" />
    </Drawing>
  );
}

export function Lot() {
  return (
    <Drawing says="A roll, a can and a reel, each with a label of its own">
      <path class="word-ink word-tint" d="M20 40H100V100H20Z" />
      <path class="word-ink word-tint" d="M124 30H196V110H124Z" />
      <circle class="word-ink word-tint" cx="260" cy="70" r="40" />
      <circle class="word-ink word-paper" cx="260" cy="70" r="12" />
      <Label x={60} y={76} strong>
        Roll 2
      </Label>
      <Label x={160} y={76} strong>
        Can 3
      </Label>
      <Label x={260} y={130}>
        Reel 1
      </Label>
    </Drawing>
  );
}

export function BalancePoint() {
  return (
    <Drawing says="A mast lying on an edge, level: the edge is under its balance point">
      <path class="word-ink word-tint" d="M20 56L300 64V76L20 84Z" />
      <path class="word-blue" d="M130 82L112 116H148Z" />
      <Span x1={20} x2={130} y={38} />
      <Label x={75} y={28} strong>
        balances at
      </Label>
      <Label x={20} y={110} at="start">
        0
      </Label>
    </Drawing>
  );
}

export function Route() {
  return (
    <Drawing says="Steps in their order, two of them ticked and the third to do now">
      {[0, 1, 2, 3].map((i) => (
        <g key={i}>
          <path class={i === 2 ? 'word-blue' : 'word-ink'} d={`M30 ${12 + i * 32}h22v22h-22Z`} />
          {i < 2 && <path class="word-ink" d={`M34 ${23 + i * 32}l6 7l9 -13`} />}
          <Label x={66} y={29 + i * 32} at="start" strong={i === 2}>
            {['Cloth weighed', 'Cups mixed', 'Rolled firm', 'Tape on'][i]}
          </Label>
        </g>
      ))}
    </Drawing>
  );
}

export function ShopFigure() {
  return (
    <Drawing says="What each build lost in a cup, as dots on a rule, with the middle one marked">
      <path class="word-ink" d="M20 84H300" />
      {[70, 112, 140, 152, 178, 214, 262].map((x) => (
        <circle key={x} class="word-solid" cx={x} cy="66" r="7" />
      ))}
      <path class="word-blue" d="M152 44V96" />
      <Label x={152} y={34} strong>
        the middle one
      </Label>
      <Label x={20} y={110} at="start">
        less
      </Label>
      <Label x={300} y={110} at="end">
        more
      </Label>
    </Drawing>
  );
}

export function PlanAndBuild() {
  return (
    <Drawing says="One plan, and three tubes made by it">
      <path class="word-ink" d="M20 30H110V110H20Z" />
      <path class="word-thin" d="M32 50H98M32 66H98M32 82H80" />
      <Label x={65} y={130} strong>
        plan
      </Label>
      {[0, 1, 2].map((i) => (
        <g key={i}>
          <path class="word-thin" d={`M116 70L168 ${36 + i * 34}`} />
          <path class="word-blue word-tint" d={`M172 ${28 + i * 34}H270V${44 + i * 34}H172Z`} />
          <Label x={280} y={41 + i * 34} at="start">
            {`no. ${i + 1}`}
          </Label>
        </g>
      ))}
    </Drawing>
  );
}
