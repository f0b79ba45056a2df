import { Choice } from '#app/parts/field.tsx';
import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { show, showSplit } from '#app/state/show.ts';
import { BenchPicture } from './bench-picture.tsx';
import { Dials } from './dials.tsx';
import type { PlannedOfBuild } from './planned-of-build.ts';
import { freeOf, type Held } from './setup.ts';
import { asked, expectedIn, type Planning, type Times } from './use-planning.ts';
import { at, heldWords, layWords, letters, wayWords } from './words.ts';

interface Props {
  planned: PlannedOfBuild;
  planning: Planning;
}

/** It bends the tube by so much of its length, and more: what is expected is no longer straight in its ways. */
const muchBent = 0.1;
/** More than the loads do anywhere, times */
const tooMuch = 1.25;

function Expected({ planned, planning }: Props) {
  const setup = planning.setup.value;
  const expected = expectedIn(planned, setup);
  const dials = [...setup.dials].sort((a, b) => a - b);
  if (!expected) {
    return (
      <p>
        Nothing is known of its stiffness: the plan it was started from does not say its wall, or a cloth of
        it has no figures. What is read is kept all the same.
      </p>
    );
  }
  const downs = dials.map(expected.down);
  return (
    <>
      {planned.counted !== 1 && (
        <p class="quiet">
          As its plan counts on {show(planned.counted, 'fraction', 0)} of what its cloths' figures say.
        </p>
      )}
      <Lines
        head={['Dial', 'expect']}
        rows={dials.map((place, i) => [`${letters[i]}  at ${at(place)}`, wayWords(downs[i] ?? 0, 1)])}
      />
      {Math.max(...downs) > muchBent * planning.length && (
        <Warning kind="amber" title="A great deal of bending">
          More than a tenth of its length: what is expected holds for small bends. Hang less.
        </Warning>
      )}
    </>
  );
}

/** Which of the loads the weight stands for, and where it would do more than they do. */
function AsLoads({ planned, planning }: Props) {
  const setup = planning.setup.value;
  const once = asked(planned, setup);
  if (!planned.design) return null;
  if (!once) return <p>A weight there does not bend it where its loads do most. Hang it elsewhere.</p>;
  const share = setup.mass / once.mass;
  const over = share * once.mostOver;
  return (
    <>
      <p>
        Bends it {show(share, 'fraction', 0)} as much as “{planned.design.name}” with its load factor, where
        that bends it most: at {at(once.matchedAt)}.
      </p>
      {over > tooMuch && (
        <Warning kind="amber" title={`More than its loads at ${at(once.mostOverAt)}`}>
          It is bent {over.toFixed(1)} times as much there as its loads ever bend it. Hold it otherwise, or
          hang less.
        </Warning>
      )}
    </>
  );
}

function HowMuch({ planned, planning }: Props) {
  const setup = planning.setup.value;
  const options: { value: string; label: string }[] = [
    { value: '0.5', label: 'Half its loads' },
    { value: '1', label: 'Its loads' },
    { value: 'own', label: 'Another weight' },
  ];
  return (
    <>
      {planned.design && (
        <Choice
          label="How heavy"
          value={String(planning.times.value)}
          options={options}
          onChange={(value) => {
            const times = (value === 'own' ? 'own' : Number(value)) as Times;
            if (times === 'own') planning.change({ mass: setup.mass });
            planning.times.value = times;
          }}
        />
      )}
      {planning.times.value === 'own' && (
        <StepField
          label="Weight"
          quantity="hungMass"
          value={setup.mass}
          step={stepIn(0.5, 0.45359237)}
          min={0.05}
          max={500}
          wrong={planning.wrongFields}
          onSet={(mass) => planning.change({ mass })}
        />
      )}
    </>
  );
}

function Where({ planning }: { planning: Planning }) {
  const { length, change, wrongFields: wrong } = planning;
  const setup = planning.setup.value;
  const { held, from, to, hangAt } = setup;
  const free = freeOf(setup, length);
  const least = length / 25;
  const place = { quantity: 'length', step: stepIn(0.01, 0.0127), digits: 0, wrong } as const;
  return (
    <>
      <Choice
        label="How it is held"
        value={held}
        options={(Object.keys(heldWords) as Held[]).map((value) => ({ value, label: heldWords[value] }))}
        onChange={planning.hold}
      />
      {held !== 'clamp1' && (
        <StepField
          {...place}
          label={held === 'rests' ? 'First rest at' : 'Clamp reaches to'}
          value={from}
          min={0}
          max={held === 'rests' ? to - least : length - least}
          onSet={(next) => change({ from: next })}
        />
      )}
      {held !== 'clamp0' && (
        <StepField
          {...place}
          label={held === 'rests' ? 'Second rest at' : 'Clamp holds from'}
          value={to}
          min={held === 'rests' ? from + least : least}
          max={length}
          onSet={(next) => change({ to: next })}
        />
      )}
      <StepField
        {...place}
        label="Weight hangs at"
        value={hangAt}
        min={free.min}
        max={free.max}
        hint="All from end 0"
        onSet={(next) => change({ hangAt: next })}
      />
    </>
  );
}

/** What to hang where, how the tube lies, and how far it should go. */
export function SetupView({ planned, planning }: Props) {
  const setup = planning.setup.value;
  const { figure, unit } = showSplit(setup.mass, 'hungMass', 1);
  return (
    <>
      <BigFigure figure={figure} unit={unit} label={`Hang at ${at(setup.hangAt)}`} />
      <p>{layWords(setup)}.</p>
      <BenchPicture length={planning.length} setup={setup} bent={expectedIn(planned, setup)?.bent} />
      <Expected planned={planned} planning={planning} />
      <AsLoads planned={planned} planning={planning} />
      <Caution>
        Stand clear of the tube and of where the weight would fall. Eyes covered. Let the weight down slowly,
        a hand above the floor. Carbon breaks without warning and throws splinters.
      </Caution>
      <HowMuch planned={planned} planning={planning} />
      <Where planning={planning} />
      <Dials planning={planning} />
    </>
  );
}
