import './proof.css';
import { Explain } from '#app/parts/explain.tsx';
import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { show, showSplit } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import {
  isSet,
  isTested,
  type ProofTest,
  proofTests,
  ringOf,
  type Stiffness,
  setOf,
  stiffnessOf,
} from './results.ts';
import { heldFrom } from './setup.ts';
import { at, gaveWayWords, layWords, wayWords } from './words.ts';

/** Two dials of one tube should tell one story: further apart than this is a slip (common practice, no source). */
const apart = 0.1;

/** As a logarithm: half as stiff again, or two thirds (common practice, no source). */
const farOff = Math.log(1.5);

function How({ stiffness, test }: { stiffness: Stiffness; test: ProofTest }) {
  const { factor, modulus, planned, scatter } = stiffness;
  const first = test.readings[0];
  return (
    <Explain
      of="Stiffness against plan"
      formula="Σ expected² / Σ (expected × measured)"
      values={[
        ...(first?.expected === undefined
          ? []
          : ([
              ['Expected', show(first.expected, 'dial')],
              ['Measured', show(first.entry.deflection, 'dial')],
            ] as const)),
        ['Factor', show(factor, 'fraction')],
        ...(planned === undefined ? [] : ([['Planned modulus along', show(planned, 'modulus', 1)]] as const)),
        ...(modulus === undefined ? [] : ([['Effective modulus', show(modulus, 'modulus', 1)]] as const)),
        ['Dials apart', show(scatter, 'fraction')],
      ]}
      source="beam theory, Gere and Timoshenko; least squares over the dials"
      sure="As good as the dials, the weight and the places. Rests that give, a clamp that turns and a wall thicker than planned are all in it."
    />
  );
}

function SaidOf({ test }: { test: ProofTest }) {
  const stiffness = stiffnessOf(test);
  const set = setOf(test);
  const moves = test.readings.some((r) => r.expected !== undefined);
  return (
    <>
      {stiffness ? (
        <p>
          {stiffness.modulus === undefined
            ? ''
            : `Effective modulus ${show(stiffness.modulus, 'modulus', 1)}, planned ${show(stiffness.planned ?? 0, 'modulus', 1)}.`}
        </p>
      ) : (
        moves && (
          <Warning kind="amber" title="It moved the other way">
            Nothing follows from that for its stiffness. Were the readings of two dials mixed up?
          </Warning>
        )
      )}
      {stiffness && Math.abs(Math.log(stiffness.factor)) > farOff && (
        <Warning kind="amber" title="Far from what was planned">
          Was the weight what was typed, and did it hang and lie where the picture says? If so, the wall is
          not the one of the plan.
        </Warning>
      )}
      {stiffness && stiffness.scatter > apart && (
        <Warning kind="amber" title="The dials tell different stories">
          {show(stiffness.scatter, 'fraction', 0)} apart: a slip in reading, or the tube is not as planned
          along its length.
        </Warning>
      )}
      {set !== undefined &&
        (isSet(test) ? (
          <Warning kind="amber" title={`It stayed ${wayWords(set)}`}>
            A sound tube goes back. Something gave: the wall, a rest, or the clamp. Look the tube over, and
            test it once more.
          </Warning>
        ) : (
          <p>It went back to where it lay{set === 0 ? '' : `, but for ${show(Math.abs(set), 'dial')}`}.</p>
        ))}
    </>
  );
}

function Test({ test, big, plain }: { test: ProofTest; big: boolean; plain: boolean | undefined }) {
  const Head = plain ? 'h3' : 'h2';
  const held = heldFrom(test.readings[0]?.entry.held);
  const stiffness = stiffnessOf(test);
  return (
    <section class="paper-part proof-said">
      {big && stiffness && (
        <BigFigure {...showSplit(stiffness.factor, 'fraction', 0)} label="As stiff as planned" />
      )}
      <Head>
        {show(test.mass, 'hungMass')} hung at {at(test.at)}
      </Head>
      <p class="quiet">
        {held && `${layWords(held)}.`}
        {!big && stiffness && ` ${show(stiffness.factor, 'fraction', 0)} as stiff as planned.`}
      </p>
      <Lines
        head={['Read at', 'expected', 'went']}
        rows={test.readings.map(({ entry, expected }) => [
          at(entry.station),
          expected === undefined ? 'not known' : wayWords(expected, 1),
          wayWords(entry.deflection),
        ])}
      />
      <SaidOf test={test} />
      {stiffness && !plain && <How stiffness={stiffness} test={test} />}
    </section>
  );
}

/** What it did not bear comes before what it bore. */
function GaveWays({ state }: { state: BuildState }) {
  return state.gaveWay.map(({ root, entry: { how, mass, at: hung, place } }) => (
    <Warning key={root} kind="stop" title={`${gaveWayWords[how]} under ${show(mass, 'hungMass')}`}>
      Hung at {at(hung)}
      {place !== undefined && `, it gave way at ${at(place)}`}. Look it over from end to end, inside too. It
      bears less now than it did.
    </Warning>
  ));
}

function Squeezes({ state, plain }: { state: BuildState; plain: boolean | undefined }) {
  if (state.squeezeTests.length === 0) return null;
  const Head = plain ? 'h3' : 'h2';
  return (
    <section class="paper-part proof-said">
      <Head>Squeezed across</Head>
      <Lines
        head={['At', 'with', 'narrower', 'of plan']}
        rows={state.squeezeTests.map(({ entry }) => {
          const { factor } = ringOf(entry);
          return [
            at(entry.station),
            show(entry.force, 'force', 0),
            show(entry.narrower, 'dial'),
            factor === undefined ? '–' : show(factor, 'fraction', 0),
          ];
        })}
      />
      <p class="quiet">Of plan: as stiff around as the wall of the plan would be.</p>
    </section>
  );
}

/** What weights and squeezes said of this tube, the newest test first; `plain` among other results, and on paper. */
export function ProofResults({ state, plain }: { state: BuildState; plain?: boolean }) {
  const tests = proofTests(state).reverse();
  return (
    <>
      <GaveWays state={state} />
      {tests.map((test, i) => (
        <Test key={test.key} test={test} big={i === 0 && !plain} plain={plain} />
      ))}
      <Squeezes state={state} plain={plain} />
    </>
  );
}

/** The tests in a record, with what they do not say. */
export function Tested({ state }: { state: BuildState }) {
  if (!isTested(state)) return null;
  return (
    <section class="proof-said">
      <h2>Tested</h2>
      <ProofResults state={state} plain />
      <Caution>
        A test says what it bore and how far it bent on that day. What it may carry is for licensed review and
        local rules.
      </Caution>
    </section>
  );
}
